package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.material.Adhesive;
import org.junit.jupiter.api.Test;

class GlueBeadTest {
  private static final Adhesive GLUE = new Samples.AdhesiveBuilder().build();

  private static Adhesive onBoth() {
    return new Adhesive(
        GLUE.family(),
        GLUE.setting(),
        GLUE.waterBased(),
        GLUE.times(),
        GLUE.air(),
        GLUE.line(),
        GLUE.bond(),
        new Adhesive.Spreading(Adhesive.Laid.BEAD, Adhesive.Faces.BOTH, GLUE.spreading().how()));
  }

  /** The glue the line wants, whatever the beads: spread and squeeze-out over the whole width. */
  private static double wanted(Adhesive adhesive, double width) {
    return adhesive.line().spread().high() * 1.1 * width / adhesive.line().density().low();
  }

  private static double laid(GlueBead bead) {
    double radius = bead.diameterMetre() / 2;
    return Math.PI * radius * radius * bead.beads() * bead.faces();
  }

  @Test
  void holdsTheGlueOfTheLineAndNotAHalfMillimetreMore() {
    for (Adhesive adhesive : new Adhesive[] {GLUE, onBoth()}) {
      for (double width = 0.006; width < 0.2; width += 0.0037) {
        GlueBead bead = GlueBead.of(adhesive, width);
        double finer = (bead.diameterMetre() - 0.0005) / bead.diameterMetre();
        assertTrue(laid(bead) >= wanted(adhesive, width) * (1 - 1e-6), "too little at " + width);
        assertTrue(laid(bead) * finer * finer < wanted(adhesive, width), "too much at " + width);
        assertTrue(bead.diameterMetre() <= 0.005 + 1e-12, bead.diameterMetre() + " m thick");
      }
    }
  }

  @Test
  void isThinnerWhereBothFacesAreSpread() {
    assertEquals(1, GlueBead.of(GLUE, 0.02).faces());
    assertEquals(2, GlueBead.of(onBoth(), 0.02).faces());
    assertTrue(
        GlueBead.of(onBoth(), 0.02).diameterMetre() < GlueBead.of(GLUE, 0.02).diameterMetre());
  }
}
