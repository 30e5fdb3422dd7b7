package benchlore.generator.drawing;

/** A place in a section through the bit's axis: {@code x} out from the axis, {@code z} up. */
record Point(double x, double z) {
  Point mirrored() {
    return new Point(-x, z);
  }

  double distance(Point other) {
    return Math.hypot(other.x - x, other.z - z);
  }
}
