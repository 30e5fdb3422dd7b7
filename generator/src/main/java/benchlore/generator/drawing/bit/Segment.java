package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** One piece of an outline. A parameter {@code t} runs along it from 0 to 1. */
sealed interface Segment permits Line, Arc {
  Point from();

  Point to();

  Point at(double t);

  /** The part between two parameters, {@code t0 < t1}. */
  Segment part(double t0, double t1);

  Segment reversed();

  Segment mirrored();

  /** Where it meets the upright line at {@code x}; unsorted, may hold values outside 0 to 1. */
  List<Double> meetsX(double x);

  /** Where it meets the level line at {@code z}; unsorted, may hold values outside 0 to 1. */
  List<Double> meetsZ(double z);

  /** Its share of an outline's area: half the integral of x dz - z dx. */
  double areaShare();

  /** Cuts the segment at the given parameters. */
  default List<Segment> cutAt(List<Double> parameters) {
    List<Double> inner = new ArrayList<>();
    for (double t : parameters) {
      if (t > 1e-9 && t < 1 - 1e-9) {
        inner.add(t);
      }
    }
    Collections.sort(inner);
    List<Segment> parts = new ArrayList<>();
    double last = 0;
    for (double t : inner) {
      if (t - last > 1e-9) {
        parts.add(part(last, t));
        last = t;
      }
    }
    parts.add(part(last, 1));
    return parts;
  }
}
