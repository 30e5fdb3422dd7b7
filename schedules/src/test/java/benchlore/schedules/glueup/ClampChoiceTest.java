package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpSchedule.Batch;
import benchlore.schedules.glueup.GlueUpSchedule.Governs;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Adhesive.Family;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Clamps are those there are; their spacing is held, their pressure is told. */
class ClampChoiceTest {
  private static final double EACH_SECOND = 20;

  /** A worktop of 3 m asks 24 clamps for the book's pressure; a shelf of 12 closes it in 4 min. */
  @Test
  void aLongWorktopIsClosedWithTheClampsThereAre() {
    Joint edge = new Joint("worktop", 3, 0.04, 3, Arrangement.IN_LINE, 0.12, 0);
    Clamps twelve = new Clamps(12, 2500, 0.045, 0.03);
    Adhesive.Line line = Samples.yellow().build().line();
    assertTrue(3 * 0.04 * line.pressureMedium().low() / 2500 > 23);
    Samples.AdhesiveBuilder slow = Samples.yellow();
    slow.open = Samples.minutes(10, 12);
    GlueUpRequest request = Samples.with(Samples.request(slow.build(), edge), twelve);
    GlueUpSchedule plan = Samples.given(request);
    assertEquals(1, plan.batches().size());
    assertEquals(12, plan.rows().get(0).count());
    assertEquals(12 * EACH_SECOND, plan.batches().get(0).closeSecond(), 1e-9);
    assertTrue(codes(request).contains("pressure-short"));
  }

  @Property(tries = 300)
  void aRowHasItsSpacingAndNoClampThatIsNotThere(
      @ForAll @IntRange(min = 2, max = 60) int shelf,
      @ForAll @Scale(3) @DoubleRange(min = 0.2, max = 2.5) double length,
      @ForAll @Scale(3) @DoubleRange(min = 0.012, max = 0.06) double thick,
      @ForAll @IntRange(min = 1, max = 5) int joints) {
    Joint edge = new Joint("top", length, thick, joints, Arrangement.IN_LINE, 0.1, 0);
    Clamps clamps = new Clamps(shelf, 2500, 0.045, 0.03);
    GlueUpRequest request = Samples.with(Samples.request(Samples.yellow().build(), edge), clamps);
    GlueUp.plan(request)
        .fold(
            given -> held(request, given.value()),
            refused -> {
              // Too few for the spacing, or an edge that even the fewest clamps close too late.
              String input = refused.reasons().get(0).input();
              assertTrue(List.of("clamps.count", "pace").contains(input), input);
              return true;
            });
  }

  private static boolean held(GlueUpRequest request, GlueUpSchedule plan) {
    Row row = plan.rows().get(0);
    assertTrue(row.count() >= row.neededForSpacing(), row.toString());
    assertTrue(row.count() <= request.clamps().count(), row.toString());
    assertTrue(row.count() <= Math.max(row.neededForForce(), row.neededForSpacing()));
    for (Batch batch : plan.batches()) {
      assertEquals(row.count(), batch.clamps());
      assertEquals(row.count() * EACH_SECOND, batch.closeSecond(), 1e-9);
      assertTrue(batch.closeSecond() <= plan.assembly().closedSecond());
    }
    boolean isShort = row.pressurePascal() < plan.pressure().lowPascal() * 0.999;
    assertEquals(isShort, codes(request).contains("pressure-short"), row.toString());
    return true;
  }

  @Test
  void clampsThatDoNotFitSideBySideAreNotSet() {
    Joint edge = new Joint("block", 0.4, 0.2, 1, Arrangement.IN_LINE, 0.2, 0);
    Clamps wide = new Clamps(40, 2500, 0.045, 0.08);
    GlueUpRequest request = Samples.with(Samples.request(Samples.epoxy().build(), edge), wide);
    GlueUpRequest pva = Samples.with(Samples.request(Samples.yellow().build(), edge), wide);
    // One row over and one under the work, each of 400 mm / 80 mm.
    assertEquals(10, ClampRoom.most(edge, wide));
    assertTrue(Samples.given(pva).rows().get(0).count() <= 10);
    assertTrue(codes(pva).contains("no-row-of-clamps"));
    assertFalse(codes(request).contains("no-row-of-clamps"));
  }

  @Test
  void aShortEdgeIsRubbedWithHotHideGlueAndTakesNoClamps() {
    Samples.AdhesiveBuilder hide = Samples.yellow();
    hide.family = Family.HOT_HIDE;
    Clamps none = new Clamps(0, 2500, 0.045, 0.03);
    GlueUpRequest rubbed = edge(hide, 0.25, none);
    Row row = Samples.given(rubbed).rows().get(0);
    assertEquals(Governs.NONE, row.governs());
    assertEquals(0, row.count());
    assertEquals(0, Samples.given(rubbed).batches().get(0).closeSecond(), 0);
    assertEquals("clamps.count", refused(edge(hide, 0.4, none)));
    assertEquals("clamps.count", refused(edge(Samples.yellow(), 0.25, none)));
  }

  private static GlueUpRequest edge(Samples.AdhesiveBuilder glue, double length, Clamps clamps) {
    Joint edge = new Joint("edge", length, 0.02, 1, Arrangement.IN_LINE, 0.1, 0);
    return Samples.with(Samples.request(glue.build(), edge), clamps);
  }

  private static String refused(GlueUpRequest request) {
    return GlueUp.plan(request).fold(given -> "", refused -> refused.reasons().get(0).input());
  }

  private static List<String> codes(GlueUpRequest request) {
    return GlueUp.plan(request).fold(Answer.Given::cautions, refused -> List.<Caution>of()).stream()
        .map(Caution::code)
        .toList();
  }
}
