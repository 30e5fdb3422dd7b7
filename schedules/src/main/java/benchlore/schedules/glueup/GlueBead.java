package benchlore.schedules.glueup;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/**
 * The bead out of the bottle that makes the spread an adhesive wants.
 *
 * <pre>
 * bead area = spread x squeeze-out x joint width / (density x faces);  diameter = sqrt(4 area / pi)
 * </pre>
 *
 * <p>A round bead, told to the next half millimetre; where one would be thicker than 5 mm, several
 * side by side. What stays in pot and brush is not in it.
 *
 * @param diameterMetre of each bead, up to the next half millimetre
 * @param beads how many along each face spread
 * @param faces how many faces are spread, 1 or 2
 * @param working how it came about
 */
public record GlueBead(double diameterMetre, int beads, int faces, WorkingLine working) {
  private static final double THICKEST_METRE = 0.005;
  private static final double STEP_METRE = 0.0005;

  /**
   * The bead for a joint this wide.
   *
   * @param adhesive spread and density are taken from it: the high and the low end
   * @param widthMetre across the joint, above 0
   */
  public static GlueBead of(Adhesive adhesive, double widthMetre) {
    int faces = adhesive.spreading().faces() == Adhesive.Faces.BOTH ? 2 : 1;
    double spread = adhesive.line().spread().high();
    double density = adhesive.line().density().low();
    double film = spread * GlueUpFigures.SQUEEZE_OUT.high() / density;
    double area = film * widthMetre / faces;
    double one = Numeric.sqrt(area / Numeric.PI * 4);
    double share = one / THICKEST_METRE;
    int beads = Math.max(1, Numeric.ceil(share * share));
    double exact = one / Numeric.sqrt(beads);
    double told = Numeric.ceil(exact / STEP_METRE - 1e-9) * STEP_METRE;
    WorkingLine line =
        new WorkingLine(
            QuantityKey.GLUE_BEAD,
            Figure.computed("bead", exact, Unit.METRE),
            "bead = sqrt(4 x spread x squeeze-out x width / (pi x density x faces x beads)), up to"
                + " the next half millimetre",
            List.of(
                Figure.of(
                    "spread",
                    spread,
                    Unit.KILOGRAM_PER_SQUARE_METRE,
                    adhesive.line().spread().from()),
                Figure.of(
                    "squeeze-out",
                    GlueUpFigures.SQUEEZE_OUT.high(),
                    Unit.RATIO,
                    GlueUpFigures.SQUEEZE_OUT.from()),
                Figure.input("joint width", widthMetre, Unit.METRE),
                Figure.of(
                    "density",
                    density,
                    Unit.KILOGRAM_PER_CUBIC_METRE,
                    adhesive.line().density().from()),
                Figure.computed("faces", faces, Unit.COUNT),
                Figure.computed("beads", beads, Unit.COUNT)),
            Provenance.commonPractice("a round bead holds the glue of the line"));
    return new GlueBead(told, beads, faces, line);
  }
}
