package benchlore.generator.picture;

import java.awt.geom.AffineTransform;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads the attribute {@code transform}. */
final class Transforms {
  private static final String NUMBER = "[-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?";
  private static final Pattern STEP =
      Pattern.compile(
          "([a-zA-Z]+)\\s*\\(\\s*(" + NUMBER + "(?:[\\s,]+" + NUMBER + ")*)\\s*\\)[\\s,]*");

  private Transforms() {}

  /** The whole of it, the first step outermost; empty for what can't be read. */
  static Optional<AffineTransform> parse(String written) {
    AffineTransform all = new AffineTransform();
    String rest = written.strip();
    Matcher step = STEP.matcher(rest);
    int at = 0;
    while (at < rest.length()) {
      if (!step.region(at, rest.length()).lookingAt()) {
        return Optional.empty();
      }
      double[] n =
          Stream.of(step.group(2).split("[\\s,]+", -1)).mapToDouble(Double::parseDouble).toArray();
      Optional<AffineTransform> one = step(step.group(1), n);
      if (one.isEmpty()) {
        return one;
      }
      all.concatenate(one.get());
      at = step.end();
    }
    return Optional.of(all);
  }

  private static Optional<AffineTransform> step(String name, double[] n) {
    return Optional.ofNullable(
        switch (name + n.length) {
          case "translate1" -> AffineTransform.getTranslateInstance(n[0], 0);
          case "translate2" -> AffineTransform.getTranslateInstance(n[0], n[1]);
          case "scale1" -> AffineTransform.getScaleInstance(n[0], n[0]);
          case "scale2" -> AffineTransform.getScaleInstance(n[0], n[1]);
          case "rotate1" -> AffineTransform.getRotateInstance(Math.toRadians(n[0]));
          case "rotate3" -> AffineTransform.getRotateInstance(Math.toRadians(n[0]), n[1], n[2]);
          case "matrix6" -> new AffineTransform(n);
          default -> null;
        });
  }
}
