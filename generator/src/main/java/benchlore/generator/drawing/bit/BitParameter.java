package benchlore.generator.drawing.bit;

import java.util.List;
import java.util.OptionalDouble;

/** The measures that only some shapes have. */
enum BitParameter {
  RADIUS("radiusMm", 1),
  ANGLE("angleDegrees", 2),
  TIP("tipMm", 4),
  DEPTH("depthMm", 8),
  STEP("stepMm", 16);

  private final String key;
  private final int flag;

  BitParameter(String key, int flag) {
    this.key = key;
    this.flag = flag;
  }

  /** Several parameters in one number, since a list would not be immutable. */
  static int flags(List<BitParameter> parameters) {
    int flags = 0;
    for (BitParameter parameter : parameters) {
      flags |= parameter.flag;
    }
    return flags;
  }

  boolean isIn(int flags) {
    return (flags & flag) != 0;
  }

  /** The component's name in {@link BitGeometry}. */
  String key() {
    return key;
  }

  OptionalDouble in(BitGeometry geometry) {
    return switch (this) {
      case RADIUS -> geometry.radiusMm();
      case ANGLE -> geometry.angleDegrees();
      case TIP -> geometry.tipMm();
      case DEPTH -> geometry.depthMm();
      case STEP -> geometry.stepMm();
    };
  }
}
