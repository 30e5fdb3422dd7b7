package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Svg;
import java.util.ArrayList;
import java.util.List;

/** How wide a drawing's words are in the widest of the usual typefaces, and how they break. */
final class Lettering {
  static final double SIZE = 11;
  static final double LINE = 13;

  private Lettering() {}

  static double width(String text) {
    double width = 0;
    for (int i = 0; i < text.length(); i++) {
      width +=
          switch (text.charAt(i)) {
            case ' ', '.', ',', ';', 'i', 'l', 't', 'f', 'r' -> 0.36;
            case 'm', 'w' -> 0.95;
            default -> 0.63;
          };
    }
    return width * SIZE;
  }

  /** Lines no wider than the room, broken at spaces; a word too long has a line of its own. */
  static List<String> lines(String text, double room) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split(" +", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && width(longer) > room) {
        lines.add(line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.add(line);
    return lines;
  }

  /** A text broken into lines. */
  record Block(List<String> lines, double wide, double high) {
    static Block of(String text, double room) {
      List<String> lines = Lettering.lines(text, room);
      double wide = lines.stream().mapToDouble(Lettering::width).max().orElse(0);
      return new Block(lines, wide, lines.size() * LINE);
    }

    /** Writes it; {@code top} is the upper side of its first line. */
    void write(Svg svg, String anchor, double x, double top) {
      double y = top + SIZE * 0.82;
      for (String line : lines) {
        svg.text(anchor, x, y, line);
        y += LINE;
      }
    }
  }
}
