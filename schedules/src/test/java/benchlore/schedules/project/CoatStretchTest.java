package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** A coat that fits no evening is refused with the batches that would; both faces say how. */
class CoatStretchTest {
  private static final int TRIED = 120;

  /** Brushed and scuffed: 420 and 240 s a square metre, 40 min around it. */
  private static final double PACE = 660;

  private static ProjectRequest evenings(int minutes, List<Part> parts) {
    List<List<ShopWeek.Span>> days = new ArrayList<>();
    for (int day = 0; day < 7; day++) {
      days.add(List.of(new ShopWeek.Span(18 * 60, 18 * 60 + minutes)));
    }
    ShopWeek week = new ShopWeek(days, List.of());
    return MadeParts.in(Projects.of(week, Climate.steady(20, 50), 1), parts);
  }

  @Test
  void theBatchesNamedFitTheEveningsAndOneFewerDoesNot() {
    Random dice = new Random(20261201);
    int told = 0;
    for (int i = 0; i < TRIED; i++) {
      int minutes = 60 + dice.nextInt(60);
      Part shelf = MadeParts.sized("shelf", 1 + dice.nextInt(9), 0.8, 0.25, Moves.FIXED);
      double each = shelf.coatedSquareMetre() / shelf.count() * PACE;
      ProjectRequest request = evenings(minutes, List.of(shelf));
      Moment from = request.start();
      double session = 2_400 + each * shelf.count();
      var refusal = CoatStretch.refusal(request, request.materials().face().coats(), from, session);
      assertEquals(session > minutes * 60, refusal.isPresent());
      if (refusal.isPresent()) {
        told++;
        int room = (int) ((minutes * 60 - 2_400) / each);
        int batches = (shelf.count() + room - 1) / room;
        Refusal reason = refusal.get();
        assertEquals(batches, reason.remedy().quantities().get(0).value(), 0, reason.toString());
        assertEquals(3 * batches, reason.remedy().quantities().get(1).value(), 0);
        assertEquals(minutes * 60, reason.problem().quantities().get(1).value(), 0);
      }
    }
    assertTrue(told > 0 && told < TRIED, "told of " + told);
  }

  @Test
  void aPlanOfHourEveningsIsRefusedWithItsBatches() {
    List<Part> shelves = List.of(MadeParts.sized("shelf", 6, 0.8, 0.25, Moves.FIXED));
    Project.plan(evenings(60, shelves))
        .fold(
            given -> fail("not refused"),
            refused -> {
              assertEquals(1, refused.reasons().size());
              assertEquals("shop.week", refused.reasons().get(0).input());
              String remedy = refused.reasons().get(0).remedy().pattern();
              return assertContains(remedy, "batches of parts");
            });
  }

  @Test
  void aPartTooLargeForAnyEveningIsNotOfferedBatches() {
    ProjectRequest request = evenings(60, List.of(MadeParts.sized("top", 1, 2.4, 1, Moves.FIXED)));
    Refusal reason =
        CoatStretch.refusal(request, request.materials().face().coats(), request.start(), 5_000)
            .orElseThrow();
    assertContains(reason.remedy().pattern(), "Not even the largest part");
  }

  /** Only a coat 1 says how, and a long top is named. */
  @Test
  void bothFacesSayHow() {
    List<Part> parts =
        List.of(
            MadeParts.sized("top", 1, 2.2, 0.8, Moves.FIXED),
            MadeParts.sized("rail", 2, 2.2, 0.08, Moves.FIXED));
    ProjectPlan plan =
        Project.plan(evenings(240, parts))
            .fold(Answer.Given::value, refused -> fail(refused.reasons().toString()));
    String first = plan.find("coat-1").orElseThrow().notes().toString();
    assertContains(first, "onto points");
    assertContains(first, "top: turned by two");
    assertFalse(first.contains("rail"));
    assertFalse(plan.find("coat-2").orElseThrow().notes().toString().contains("onto points"));
  }

  private static boolean assertContains(String text, String words) {
    assertTrue(text.contains(words), text);
    return true;
  }
}
