package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.quantity.Unit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Pressures as high as are published, and clamps that can really stand there. */
class ClampRoomTest {
  /** A lamination of dense wood at so many psi, 100 mm wide. */
  private static GlueUpRequest lamination(double psi, Clamps clamps) {
    Samples.AdhesiveBuilder adhesive = Samples.yellow();
    adhesive.open = Samples.minutes(120, 120);
    adhesive.pressure(Samples.of(psi * Samples.PSI, Unit.PASCAL));
    Joint joint = new Joint("lamination", 1, 0.1, 1, Arrangement.IN_LINE, 0.1, 0);
    GlueUpRequest request = Samples.request(adhesive.build(), joint);
    return Samples.with(Samples.with(request, clamps), new Pace(20, 400, 5, 2));
  }

  private static List<String> codes(GlueUpRequest request) {
    return GlueUp.plan(request)
        .fold(
            given -> given.cautions().stream().map(Caution::code).toList(),
            refused -> List.of(refused.reasons().toString()));
  }

  @Test
  void twelveHundredPoundsTheInchAreAPressAndNoClamps() {
    Clamps strong = new Clamps(500, 5000, 0.05, 0.03);
    GlueUpRequest request = lamination(1200, strong);
    assertTrue(codes(request).contains("no-row-of-clamps"), () -> codes(request).toString());
    GlueUpSchedule.Row row = Samples.given(request).rows().get(0);
    // Twenty a side at 50 mm each.
    assertEquals(40, row.count());
    assertEquals(40 * 5000 / 0.1, row.pressurePascal(), 1e-6);
    assertTrue(row.neededForForce() > row.count());
  }

  @Test
  void usualPressureIsWithinReachOfARow() {
    Clamps strong = new Clamps(60, 5000, 0.05, 0.03);
    List<String> found = codes(lamination(150, strong));
    assertFalse(found.contains("no-row-of-clamps"), found::toString);
    assertFalse(found.contains("pressure-short"), found::toString);
    // With fewer on the shelf it is the shelf that is short.
    List<String> few = codes(lamination(150, new Clamps(8, 5000, 0.05, 0.03)));
    assertTrue(few.contains("pressure-short"), few::toString);
  }

  @Test
  void clampsNeverStandInEachOther() {
    for (double length : new double[] {0.005, 0.04, 0.1, 0.33, 1, 3}) {
      Joint joint = new Joint("edge", length, 0.02, 1, Arrangement.IN_LINE, 0.1, 0);
      Clamps clamps = new Clamps(500, 100, 0, 0.08);
      int most = ClampRoom.most(joint, clamps);
      assertTrue(most == 1 || most * 0.08 / 2 <= length + 1e-9, length + ": " + most);
    }
  }
}
