package benchlore.generator.drawing.joint;

import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.List;

/** Joints of boxes, cases and tops. */
final class CaseJoints {
  private static final double T = 20;
  private static final double LONG = 74;
  private static final double DEEP = 104;
  private static final double GAP = 30;

  private CaseJoints() {}

  static Scene box(JointSizes sizes) {
    double finger = sizes.middle("thickness-share") * T;
    int count = 6;
    double high = finger * count;
    List<Point> comb = new ArrayList<>(List.of(new Point(0, 0)));
    for (int i = 0; i < count; i++) {
      double x = i % 2 == 0 ? LONG : LONG - T;
      comb.add(new Point(x, i * finger));
      comb.add(new Point(x, (i + 1) * finger));
    }
    comb.add(new Point(0, high));
    double from = LONG - T + GAP + T;
    Scene scene =
        new Scene()
            .wood(Prism.front(Grain.X, 0, T, comb.toArray(new Point[0])))
            .wood(Prism.block(new Space(from, T, 0), new Space(from + T, DEEP, high), Grain.Y));
    for (int i = 1; i < count; i += 2) {
      scene.wood(
          Prism.block(
              new Space(from, 0, i * finger), new Space(from + T, T, (i + 1) * finger), Grain.Y));
    }
    return scene
        .note(new Space(LONG, T / 2, 4.5 * finger), "finger", sizes.share("thickness-share"))
        .note(new Space(from + T, T / 2, 1.5 * finger), "long", Measure.words("1 t"));
  }

  /** Half the height a tail loses from its wide end to its shoulder. */
  private static double lean(JointSizes sizes, double length) {
    return length / sizes.middle("slope");
  }

  private static final double TAIL = 30;
  private static final double PIN = 11;

  private static Prism tails(double length, double lean) {
    List<Point> comb = new ArrayList<>(List.of(new Point(0, 0), new Point(LONG - length, 0)));
    double z = PIN;
    for (int i = 0; i < 3; i++) {
      comb.add(new Point(LONG - length, z + lean));
      comb.add(new Point(LONG, z));
      comb.add(new Point(LONG, z + TAIL));
      comb.add(new Point(LONG - length, z + TAIL - lean));
      z += TAIL + PIN;
    }
    comb.add(new Point(LONG - length, z));
    comb.add(new Point(0, z));
    return Prism.front(Grain.X, 0, T, comb.toArray(new Point[0]));
  }

  private static final double TAILS_HIGH = 3 * TAIL + 4 * PIN;

  static Scene throughDovetail(JointSizes sizes) {
    double lean = lean(sizes, T);
    double from = LONG + GAP;
    Scene scene =
        new Scene()
            .wood(tails(T, lean))
            .wood(
                Prism.block(new Space(from, T, 0), new Space(from + T, DEEP, TAILS_HIGH), Grain.Y));
    for (int i = 0; i < 4; i++) {
      double low = i * (TAIL + PIN);
      double under = i == 0 ? 0 : lean;
      double over = i == 3 ? 0 : lean;
      scene.wood(
          Prism.front(
              Grain.Y,
              0,
              T,
              new Point(from, low - under),
              new Point(from + T, low),
              new Point(from + T, low + PIN),
              new Point(from, low + PIN + over)));
    }
    return scene
        .note(new Space(LONG - T / 2, 0, TAILS_HIGH - PIN - 1), "slope", sizes.slope())
        .note(new Space(LONG, T / 2, PIN + TAIL * 1.5 + PIN), "tail", Measure.words("wide"))
        .note(new Space(from + T, T / 2, PIN / 2 + TAIL + PIN), "pin", Measure.words("slim"));
  }

  static Scene halfBlindDovetail(JointSizes sizes) {
    double lap = sizes.middle("lap-share") * T;
    double length = T - lap;
    double lean = lean(sizes, length);
    double from = LONG + GAP;
    List<Point> comb = new ArrayList<>(List.of(new Point(from, 0), new Point(from + T, 0)));
    comb.add(new Point(from + T, TAILS_HIGH));
    comb.add(new Point(from, TAILS_HIGH));
    for (int i = 2; i >= 0; i--) {
      double low = PIN + i * (TAIL + PIN);
      comb.add(new Point(from, low + TAIL - lean));
      comb.add(new Point(from + length, low + TAIL));
      comb.add(new Point(from + length, low));
      comb.add(new Point(from, low + lean));
    }
    return new Scene()
        .wood(tails(length, lean))
        .wood(
            Prism.block(
                new Space(from, T * 0.8, 0), new Space(from + T, DEEP, TAILS_HIGH), Grain.Y))
        .wood(Prism.front(Grain.Y, 0, T * 0.8, comb.toArray(new Point[0])))
        .note(
            new Space(from + T - lap / 2, 0, TAILS_HIGH - PIN - TAIL / 2),
            "lap",
            sizes.share("lap-share"))
        .note(new Space(LONG - length / 2, 0, PIN + lean / 2 + 1), "slope", sizes.slope())
        .note(new Space(from + T, DEEP / 2, TAILS_HIGH / 2), "front", Measure.words("unbroken"));
  }

  static Scene rebate(JointSizes sizes) {
    double deep = sizes.middle("thickness-share") * T;
    double high = 90;
    double from = T + GAP + 16;
    return new Scene()
        .wood(
            Prism.front(
                Grain.Z,
                0,
                DEEP,
                new Point(0, 0),
                new Point(T, 0),
                new Point(T, high - T),
                new Point(T - deep, high - T),
                new Point(T - deep, high),
                new Point(0, high)))
        .wood(Prism.block(new Space(from, 0, high - T), new Space(from + 86, DEEP, high), Grain.X))
        .move(new Space(from - 2, 0, high - T / 2), new Space(T + 3, 0, high - T / 2))
        .note(new Space(T - deep / 2, 0, high - T), "rebate", sizes.share("thickness-share"))
        .note(new Space(from + 40, 0, high - T), "width", Measure.words("1 t"));
  }

  static Scene housing(JointSizes sizes) {
    double deep = sizes.middle("thickness-share") * T;
    double high = 116;
    double low = 52;
    double from = T + GAP + 10;
    return new Scene()
        .wood(
            Prism.front(
                Grain.Z,
                0,
                DEEP,
                new Point(0, 0),
                new Point(T, 0),
                new Point(T, low),
                new Point(T - deep, low),
                new Point(T - deep, low + T),
                new Point(T, low + T),
                new Point(T, high),
                new Point(0, high)))
        .wood(Prism.block(new Space(from, 0, low), new Space(from + 84, DEEP, low + T), Grain.X))
        .move(new Space(from - 2, 0, low + T / 2), new Space(T + 3, 0, low + T / 2))
        .note(new Space(T - deep / 2, 0, low + T / 2), "deep", sizes.share("thickness-share"))
        .note(new Space(from + 60, 0, low + T), "wide", Measure.words("shelf, snug"));
  }

  static Scene breadboard(JointSizes sizes) {
    double cap = 40;
    double thick = 30;
    double third = thick / 3;
    double deep = 130;
    double tongue = 18;
    double from = cap + 40;
    Scene scene =
        new Scene()
            .wood(Prism.block(new Space(0, 0, 0), new Space(cap, deep, thick), Grain.Y))
            .mark(
                Face.Look.HOLE,
                new Space(cap, 3, third),
                new Space(cap, deep - 3, third),
                new Space(cap, deep - 3, 2 * third),
                new Space(cap, 3, 2 * third));
    double[] pins = {deep - 24, deep / 2, 24};
    double[] slots = {8, 3.4, 8};
    for (int i = 0; i < pins.length; i++) {
      scene.mark(Face.Look.HOLE, pinHole(new Space(cap / 2, pins[i], thick), slots[i]));
    }
    scene.wood(
        Prism.block(
            new Space(from, 6, third), new Space(from + tongue, deep - 6, 2 * third), Grain.X));
    return scene
        .wood(
            Prism.block(new Space(from + tongue, 0, 0), new Space(from + 84, deep, thick), Grain.X))
        .note(new Space(cap / 2, pins[0], thick), "slot longer", sizes.mm("gap"))
        .note(new Space(from + tongue / 2, deep / 2, 2 * third), "glue only", sizes.mm("length"))
        .note(
            new Space(from + 84, deep * 0.25, thick / 2), "tongue", sizes.share("thickness-share"));
  }

  private static Space[] pinHole(Space middle, double half) {
    List<Space> hole = new ArrayList<>();
    double r = 3.4;
    for (int i = 0; i < 20; i++) {
      double a = 2 * Math.PI * i / 20;
      double shift = Math.sin(a) >= 0 ? half - r : r - half;
      hole.add(middle.plus(new Space(r * Math.cos(a), shift + r * Math.sin(a), 0)));
    }
    return hole.toArray(new Space[0]);
  }
}
