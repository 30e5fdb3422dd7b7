package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Point;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Path data, every command of SVG 1.1, read into an outline. */
final class PathData {
  private static final String COMMANDS = "MmLlHhVvCcSsQqTtAaZz";
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

  private final String data;
  private final Path2D.Double path = new Path2D.Double();
  private int at;
  private boolean broken;
  private double x;
  private double y;
  private double startX;
  private double startY;
  // Where the last curve's control point lies, mirrored by S and T.
  private double leadX;
  private double leadY;

  private PathData(String data) {
    this.data = data;
  }

  /** The outline; empty for what is no path data. */
  static Optional<Path2D.Double> parse(String data) {
    PathData reading = new PathData(data);
    reading.read();
    return reading.broken ? Optional.empty() : Optional.of(reading.path);
  }

  private void read() {
    char command = ' ';
    skip();
    broken = at >= data.length() || Character.toUpperCase(data.charAt(at)) != 'M';
    while (at < data.length() && !broken) {
      if (COMMANDS.indexOf(data.charAt(at)) >= 0) {
        command = data.charAt(at++);
      } else if (Character.toUpperCase(command) == 'Z') {
        broken = true;
        return;
      } else if (Character.toUpperCase(command) == 'M') {
        // Further places after a move are lines.
        command = command == 'M' ? 'L' : 'l';
      }
      draw(Character.toUpperCase(command), Character.isLowerCase(command));
      skip();
    }
  }

  private void draw(char command, boolean relative) {
    double dx = relative ? x : 0;
    double dy = relative ? y : 0;
    switch (command) {
      case 'M' -> move(dx + number(), dy + number());
      case 'L' -> line(dx + number(), dy + number());
      case 'H' -> line(dx + number(), y);
      case 'V' -> line(x, dy + number());
      case 'C' -> cubic(dx + number(), dy + number(), dx, dy);
      case 'S' -> cubic(2 * x - leadX, 2 * y - leadY, dx, dy);
      case 'Q' -> quadratic(dx + number(), dy + number(), dx, dy);
      case 'T' -> quadratic(2 * x - leadX, 2 * y - leadY, dx, dy);
      case 'A' -> arc(dx, dy);
      default -> close();
    }
  }

  private void move(double toX, double toY) {
    if (!broken) {
      path.moveTo(toX, toY);
      startX = toX;
      startY = toY;
      here(toX, toY, toX, toY);
    }
  }

  private void line(double toX, double toY) {
    if (!broken) {
      path.lineTo(toX, toY);
      here(toX, toY, toX, toY);
    }
  }

  private void cubic(double firstX, double firstY, double dx, double dy) {
    double secondX = dx + number();
    double secondY = dy + number();
    double toX = dx + number();
    double toY = dy + number();
    if (!broken) {
      path.curveTo(firstX, firstY, secondX, secondY, toX, toY);
      here(toX, toY, secondX, secondY);
    }
  }

  private void quadratic(double midX, double midY, double dx, double dy) {
    double toX = dx + number();
    double toY = dy + number();
    if (!broken) {
      path.quadTo(midX, midY, toX, toY);
      here(toX, toY, midX, midY);
    }
  }

  private void close() {
    path.closePath();
    here(startX, startY, startX, startY);
  }

  private void here(double toX, double toY, double controlX, double controlY) {
    x = toX;
    y = toY;
    leadX = controlX;
    leadY = controlY;
  }

  private void arc(double dx, double dy) {
    double rx = Math.abs(number());
    double ry = Math.abs(number());
    double turn = Math.toRadians(number());
    boolean large = flag();
    boolean sweep = flag();
    double toX = dx + number();
    double toY = dy + number();
    if (broken || rx == 0 || ry == 0 || (toX == x && toY == y)) {
      line(toX, toY);
      return;
    }
    EllipticArc arc = new EllipticArc(rx, ry, turn, large, sweep);
    path.append(arc.between(new Point(x, y), new Point(toX, toY)), true);
    here(toX, toY, toX, toY);
  }

  private void skip() {
    while (at < data.length() && (data.charAt(at) == ',' || data.charAt(at) <= ' ')) {
      at++;
    }
  }

  private boolean flag() {
    skip();
    boolean readable = at < data.length() && (data.charAt(at) == '0' || data.charAt(at) == '1');
    broken |= !readable;
    return readable && data.charAt(at++) == '1';
  }

  private double number() {
    skip();
    Matcher next = NUMBER.matcher(data).region(at, data.length());
    if (!next.lookingAt()) {
      broken = true;
      return 0;
    }
    at = next.end();
    return Double.parseDouble(next.group());
  }
}
