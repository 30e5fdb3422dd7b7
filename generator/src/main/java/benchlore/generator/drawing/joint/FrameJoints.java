package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.List;

/** Joints of frames: an upright on the left, a rail drawn out of it to the right. */
final class FrameJoints {
  private static final double T = 36;
  private static final double STILE = 42;
  private static final double HIGH = 104;
  private static final double RAIL_LOW = 44;
  private static final double RAIL_LONG = 56;

  private FrameJoints() {}

  static Scene mortiseAndTenon(JointSizes sizes) {
    double thick = sizes.middle("thickness-share") * T;
    double y0 = (T - thick) / 2;
    double low = RAIL_LOW + 5;
    double high = HIGH - 17;
    double tenon = 28;
    double from = STILE + 32;
    return stile(HIGH)
        .mark(Face.Look.HOLE, mouth(y0, y0 + thick, low, high))
        .axis(new Space(STILE, T / 2, (low + high) / 2), new Space(from, T / 2, (low + high) / 2))
        .wood(
            Prism.block(
                new Space(from, y0, low), new Space(from + tenon, y0 + thick, high), Grain.X))
        .wood(rail(from + tenon, 0, T))
        .note(new Space(from + tenon / 2, y0, high), "tenon", sizes.share("thickness-share"))
        .note(new Space(STILE, T / 2, low + 4), "room below", sizes.mm("gap"))
        .note(new Space(from + tenon, 0, RAIL_LOW + 3), "shoulder", Measure.words("all round"));
  }

  static Scene looseTenon(JointSizes sizes) {
    double r = sizes.middle("thickness-share") * T / 2;
    double low = RAIL_LOW + 12;
    double high = HIGH - 20;
    double right = STILE + 74;
    return stile(HIGH)
        .mark(Face.Look.HOLE, slot(STILE, r, low, high).toArray(new Space[0]))
        .axis(new Space(STILE, T / 2, (low + high) / 2), new Space(right, T / 2, (low + high) / 2))
        .round(
            new Prism(slot(STILE + 58, r, low, high), new Space(-40, 0, 0), Grain.NONE),
            "drw-stock drw-top")
        .wood(rail(right, 0, T))
        .note(new Space(STILE + 45, T / 2, high + r), "tenon", sizes.share("thickness-share"))
        .note(new Space(STILE, T / 2, low), "each hole", sizes.mm("depth"));
  }

  private static List<Space> slot(double x, double r, double low, double high) {
    List<Space> slot = new ArrayList<>();
    for (int i = 0; i <= 10; i++) {
      double a = -Math.PI + Math.PI * i / 10;
      slot.add(new Space(x, T / 2 + r * Math.cos(a), low + r * Math.sin(a)));
    }
    for (int i = 0; i <= 10; i++) {
      double a = Math.PI * i / 10;
      slot.add(new Space(x, T / 2 + r * Math.cos(a), high + r * Math.sin(a)));
    }
    return slot;
  }

  /** Seen at the end of the upright, where its two cheeks show; the rail is lifted out. */
  static Scene bridle(JointSizes sizes) {
    double thick = sizes.middle("thickness-share") * T;
    double x0 = (T - thick) / 2;
    double x1 = x0 + thick;
    double floor = HIGH - STILE;
    double low = HIGH + 12;
    return new Scene()
        .wood(
            Prism.front(
                Grain.Z,
                0,
                STILE,
                new Point(0, 46),
                new Point(T, 46),
                new Point(T, HIGH),
                new Point(x1, HIGH),
                new Point(x1, floor),
                new Point(x0, floor),
                new Point(x0, HIGH),
                new Point(0, HIGH)))
        .wood(Prism.block(new Space(0, STILE, low), new Space(T, STILE + 90, low + STILE), Grain.Y))
        .wood(Prism.block(new Space(x0, 0, low), new Space(x1, STILE, low + STILE), Grain.Y))
        .move(new Space(T / 2, 0, low + 4), new Space(T / 2, 0, HIGH - 12))
        .note(
            new Space(x1, STILE * 0.6, low + STILE * 0.7), "tongue", sizes.share("thickness-share"))
        .note(new Space(T, STILE / 2, HIGH - 14), "cheeks", sizes.share("thickness-share"));
  }

  static Scene halfLap(JointSizes sizes) {
    double half = sizes.middle("thickness-share") * T;
    double from = STILE + 26;
    return stile(RAIL_LOW)
        .wood(leaf(half, T))
        .wood(
            Prism.block(new Space(from, 0, RAIL_LOW), new Space(from + STILE, half, HIGH), Grain.X))
        .wood(rail(from + STILE, 0, T))
        .note(new Space(from + STILE / 2, 0, HIGH - 6), "lap", sizes.share("thickness-share"))
        .note(new Space(STILE / 2, half, RAIL_LOW + 18), "cheek", sizes.share("thickness-share"));
  }

  static Scene pocketScrew(JointSizes sizes) {
    double right = STILE + 26;
    double tilt = Math.tan(Math.toRadians(sizes.middle("angle")));
    Scene scene = stile(HIGH).wood(rail(right, 0, T));
    for (double z : new double[] {RAIL_LOW + 18, HIGH - 18}) {
      double end = right + 12;
      scene.mark(Face.Look.HOLE, pocket(end, z));
      double fromY = -2;
      scene.axis(new Space(end + 34, fromY, z), new Space(STILE - 16, fromY + 60 * tilt, z));
    }
    return scene
        .note(
            new Space(right + 34, 0, RAIL_LOW + 18),
            "slant",
            Measure.degrees(sizes.middle("angle")))
        .note(new Space(right + 34, 0, HIGH - 18), "pocket", Measure.words("on the back"))
        .note(new Space(STILE, T / 2, RAIL_LOW - 10), "end grain", Measure.words("to long grain"));
  }

  /** The long mouth of a slanting hole, an ellipse. */
  private static Space[] pocket(double x, double z) {
    List<Space> mouth = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      double a = 2 * Math.PI * i / 24;
      mouth.add(new Space(x + 18 + 18 * Math.cos(a), 0, z + 5 * Math.sin(a)));
    }
    return mouth.toArray(new Space[0]);
  }

  static Scene splinedMitre(JointSizes sizes) {
    double thick = sizes.middle("thickness-share") * T;
    double y0 = (T - thick) / 2;
    double step = sizes.middle("depth") / Math.sqrt(2);
    double heel = HIGH - STILE;
    double out = 26;
    double mid = STILE / 2;
    return new Scene()
        .wood(mitredUpright(heel))
        .mark(
            Face.Look.HOLE,
            new Space(STILE, y0, heel),
            new Space(STILE, y0 + thick, heel),
            new Space(0, y0 + thick, HIGH),
            new Space(0, y0, HIGH))
        .wood(key(heel, step, y0, y0 + thick))
        .wood(mitredRail(heel, out))
        .note(
            new Space(mid + 13 + step, y0, HIGH - mid + 13 + step),
            "key",
            sizes.share("thickness-share"))
        .note(new Space(STILE, T, heel), "slot deep", sizes.mm("depth"))
        .note(new Space(STILE + out + 74, T / 2, HIGH - mid + out), "mitre", Measure.degrees(45));
  }

  private static Prism mitredUpright(double heel) {
    return Prism.front(
        Grain.Z,
        0,
        T,
        new Point(0, 0),
        new Point(STILE, 0),
        new Point(STILE, heel),
        new Point(0, HIGH));
  }

  /** A strip along the mitre, a little way out of its slot. */
  private static Prism key(double heel, double step, double y0, double y1) {
    double in = 13 - step;
    double out = 13 + step;
    return Prism.front(
        Grain.NONE,
        y0,
        y1,
        new Point(STILE + in, heel + in),
        new Point(STILE + out, heel + out),
        new Point(out, HIGH + out),
        new Point(in, HIGH + in));
  }

  private static Prism mitredRail(double heel, double out) {
    return Prism.front(
        Grain.X,
        0,
        T,
        new Point(STILE + out, heel + out),
        new Point(STILE + out + 74, heel + out),
        new Point(STILE + out + 74, HIGH + out),
        new Point(out, HIGH + out));
  }

  static Scene frameAndPanel(JointSizes sizes) {
    double deep = sizes.middle("depth");
    double y0 = T * 3 / 8;
    double y1 = T * 5 / 8;
    double from = STILE + 24;
    double railHigh = 30;
    double panelLow = railHigh + 22;
    double high = 128;
    double right = from + deep + 84;
    return new Scene()
        .wood(groovedUpright(high, deep))
        .wood(
            Prism.block(new Space(from, y0, 4), new Space(from + deep, y1, railHigh - 4), Grain.X))
        .wood(groovedRail(from + deep, right, railHigh, deep))
        .wood(
            Prism.block(
                new Space(from + 2, y0 + 0.5, panelLow), new Space(right, y1 - 0.5, high), Grain.Z))
        .note(new Space(STILE - deep / 2, T / 2, high), "groove", sizes.mm("depth"))
        .note(new Space(from + 2, y0, 100), "room left", sizes.mm("gap"))
        .note(new Space(from + 70, y0, panelLow + 20), "panel", Measure.words("no glue"));
  }

  private static Prism groovedUpright(double high, double deep) {
    return Prism.top(
        Grain.Z,
        0,
        high,
        new Point(0, 0),
        new Point(STILE, 0),
        new Point(STILE, T * 3 / 8),
        new Point(STILE - deep, T * 3 / 8),
        new Point(STILE - deep, T * 5 / 8),
        new Point(STILE, T * 5 / 8),
        new Point(STILE, T),
        new Point(0, T));
  }

  private static Prism groovedRail(double x0, double x1, double high, double deep) {
    return Prism.side(
        Grain.X,
        x0,
        x1,
        new Point(0, 0),
        new Point(T, 0),
        new Point(T, high),
        new Point(T * 5 / 8, high),
        new Point(T * 5 / 8, high - deep),
        new Point(T * 3 / 8, high - deep),
        new Point(T * 3 / 8, high),
        new Point(0, high));
  }

  private static Scene stile(double high) {
    return new Scene().wood(Prism.block(new Space(0, 0, 0), new Space(STILE, T, high), Grain.Z));
  }

  private static Prism leaf(double y0, double y1) {
    return Prism.block(new Space(0, y0, RAIL_LOW), new Space(STILE, y1, HIGH), Grain.Z);
  }

  private static Prism rail(double x, double y0, double y1) {
    return Prism.block(new Space(x, y0, RAIL_LOW), new Space(x + RAIL_LONG, y1, HIGH), Grain.X);
  }

  private static Space[] mouth(double y0, double y1, double low, double high) {
    return new Space[] {
      new Space(STILE, y0, low),
      new Space(STILE, y1, low),
      new Space(STILE, y1, high),
      new Space(STILE, y0, high)
    };
  }
}
