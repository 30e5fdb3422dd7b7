package benchlore.generator.picture;

import benchlore.generator.drawing.svg.Box;
import java.util.Optional;
import java.util.stream.Stream;

/** The {@code viewBox} of a picture. */
final class Frames {
  private static final String NUMBER = "[-+]?(\\d+\\.?\\d*|\\.\\d+)";
  private static final String FRAME = NUMBER + "([\\s,]+" + NUMBER + "){3}";

  private Frames() {}

  /** What the picture frames; empty if that can't be read or is nothing. */
  static Optional<Box> of(Element root) {
    String written = root.value("viewBox").strip();
    if (!written.matches(FRAME)) {
      return Optional.empty();
    }
    double[] n = Stream.of(written.split("[\\s,]+", -1)).mapToDouble(Double::parseDouble).toArray();
    return n[2] > 0 && n[3] > 0
        ? Optional.of(new Box(n[0], n[1], n[0] + n[2], n[1] + n[3]))
        : Optional.empty();
  }
}
