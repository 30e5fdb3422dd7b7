package benchlore.generator.drawing.bit;

import static benchlore.generator.drawing.bit.BitParameter.ANGLE;
import static benchlore.generator.drawing.bit.BitParameter.DEPTH;
import static benchlore.generator.drawing.bit.BitParameter.RADIUS;
import static benchlore.generator.drawing.bit.BitParameter.STEP;
import static benchlore.generator.drawing.bit.BitParameter.TIP;

import java.util.List;
import java.util.Optional;

/** The profiles of router bits that can be drawn, each with the measures it needs and may have. */
public enum BitShape {
  /** Flat tip, parallel sides. */
  STRAIGHT("straight", CutKind.GROOVE, List.of(), List.of()),
  /** Parallel sides with a bearing that follows a template. */
  TRIM("trim", CutKind.TRIM, List.of(), List.of()),
  /** Flat tip with rounded corners. */
  CORNER_RADIUS("corner-radius", CutKind.GROOVE, List.of(RADIUS), List.of()),
  /** Half-ball tip. */
  BALL("ball", CutKind.GROOVE, List.of(), List.of(RADIUS)),
  /** Small ball on a slender cone. */
  TAPERED_BALL("tapered-ball", CutKind.GROOVE, List.of(ANGLE, TIP), List.of()),
  /** Pointed cone. */
  V("v", CutKind.GROOVE, List.of(ANGLE), List.of()),
  /** Cone with a flat tip. */
  FLAT_TIP_V("flat-tip-v", CutKind.GROOVE, List.of(ANGLE, TIP), List.of()),
  /** Cone that takes the corner off an edge. */
  CHAMFER("chamfer", CutKind.EDGE, List.of(ANGLE), List.of()),
  /** Hollow quarter circle that rounds an edge. */
  ROUND_OVER("round-over", CutKind.EDGE, List.of(RADIUS), List.of()),
  /** Round-over that leaves a step at both ends of the arc. */
  BEAD("bead", CutKind.EDGE, List.of(RADIUS, STEP), List.of()),
  /** Bulging quarter circle that hollows an edge. */
  COVE("cove", CutKind.EDGE, List.of(RADIUS), List.of()),
  /** S-curve that leaves the edge round above and hollow below. */
  OGEE("ogee", CutKind.EDGE, List.of(RADIUS), List.of()),
  /** S-curve that leaves the edge hollow above and round below. */
  REVERSE_OGEE("reverse-ogee", CutKind.EDGE, List.of(RADIUS), List.of()),
  /** Widest at the tip. */
  DOVETAIL("dovetail", CutKind.GROOVE, List.of(ANGLE), List.of()),
  /** Flat cutter that leaves a square step along an edge. */
  RABBET("rabbet", CutKind.EDGE, List.of(), List.of(DEPTH)),
  /** Thin disc that cuts a groove into an edge. */
  SLOT("slot", CutKind.EDGE, List.of(), List.of(DEPTH)),
  /** Disc on a neck, for a slot in the form of a T. */
  T_SLOT("t-slot", CutKind.GROOVE, List.of(TIP), List.of(DEPTH)),
  /** Small disc on a neck, plunged and then moved along, for hanging on a screw head. */
  KEYHOLE("keyhole", CutKind.GROOVE, List.of(TIP), List.of(DEPTH)),
  /** Wide and flat, for planing a board or a spoilboard. */
  SURFACING("surfacing", CutKind.SURFACE, List.of(), List.of()),
  /** Plunging point between two hollow quarter circles. */
  POINT_ROUND_OVER("point-round-over", CutKind.GROOVE, List.of(RADIUS), List.of()),
  /** Hollow half circle that rounds a whole edge. */
  BULL_NOSE("bull-nose", CutKind.WHOLE_EDGE, List.of(RADIUS), List.of()),
  /** Wide cutter that leaves a sloping border round a panel. */
  PANEL_BEVEL("panel-bevel", CutKind.EDGE, List.of(ANGLE, DEPTH), List.of(STEP)),
  /** Wide cutter that leaves a hollow border round a panel. */
  PANEL_COVE("panel-cove", CutKind.EDGE, List.of(RADIUS, DEPTH), List.of(STEP)),
  /** Cone with a tooth, for mitres that interlock. */
  LOCK_MITRE("lock-mitre", CutKind.WHOLE_EDGE, List.of(ANGLE), List.of()),
  /** Stack of wedge-shaped teeth. */
  FINGER_JOINT("finger-joint", CutKind.WHOLE_EDGE, List.of(DEPTH), List.of(STEP)),
  /** Two discs that leave a tongue between them. */
  TONGUE_AND_GROOVE("tongue-and-groove", CutKind.WHOLE_EDGE, List.of(DEPTH, TIP), List.of()),
  /** Shallow arc below a small step. */
  THUMBNAIL("thumbnail", CutKind.EDGE, List.of(RADIUS, STEP), List.of(DEPTH)),
  /** Bulb that hollows an edge behind a rounded lip. */
  FINGER_PULL("finger-pull", CutKind.EDGE, List.of(RADIUS), List.of());

  private final String word;
  private final CutKind cut;
  private final int needs;
  private final int may;

  BitShape(String word, CutKind cut, List<BitParameter> needs, List<BitParameter> may) {
    this.word = word;
    this.cut = cut;
    this.needs = BitParameter.flags(needs);
    this.may = BitParameter.flags(may);
  }

  /** Finds the shape by the word used in records, such as {@code round-over}. */
  public static Optional<BitShape> parse(String word) {
    if (word == null) {
      throw new NullPointerException("word");
    }
    for (BitShape shape : values()) {
      if (shape.word.equals(word)) {
        return Optional.of(shape);
      }
    }
    return Optional.empty();
  }

  /** The word used in records. */
  public String word() {
    return word;
  }

  /** Whether its angle is measured between both flanks; else from the axis. */
  boolean hasIncludedAngle() {
    return this == V || this == FLAT_TIP_V || this == TAPERED_BALL;
  }

  CutKind cut() {
    return cut;
  }

  boolean needs(BitParameter parameter) {
    return parameter.isIn(needs);
  }

  boolean allows(BitParameter parameter) {
    return parameter.isIn(needs | may);
  }
}
