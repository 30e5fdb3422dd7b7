package benchlore.schedules.coating;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SprayGun;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Duration;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.time.Weekday;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** A session missed by minutes is offered, and only such a one. */
class NearMissTest {
  private static final Moment MONDAY = Moment.of(2026, 5, 4, 8, 0);

  /** Mondays and Saturdays in the morning, and on Wednesday a session of this many minutes. */
  private static CoatingRequest job(int wednesdayMinutes, int coatMinutes) {
    ShopWeek week =
        ShopWeek.of(
            Map.of(
                Weekday.MONDAY,
                List.of(new ShopWeek.Span(8 * 60, 12 * 60)),
                Weekday.WEDNESDAY,
                List.of(new ShopWeek.Span(18 * 60, 18 * 60 + wednesdayMinutes)),
                Weekday.SATURDAY,
                List.of(new ShopWeek.Span(8 * 60, 12 * 60))),
            List.of());
    FinishMaker maker = FinishMaker.oil();
    maker.recoatCloses = Optional.empty();
    QuantityRequest quantity =
        new QuantityRequest(
            maker.make(),
            CoatedArea.of(1, 0.5, 0.02, 1, true),
            2,
            maker.wetFilm,
            ApplicationMethod.BRUSH,
            SprayGun.HVLP);
    CoatSessions hours =
        new CoatSessions(week, Duration.ofSeconds(900), Duration.ofSeconds(60.0 * coatMinutes));
    return new CoatingRequest(quantity, Climate.steady(20, 50), MONDAY, hours, Sheen.GLOSS);
  }

  @Property(tries = 60)
  void onlyWhatIsMissedByMinutesIsOffered(
      @ForAll @IntRange(min = 20, max = 150) int session,
      @ForAll @IntRange(min = 20, max = 90) int coat) {
    CoatingRequest job = job(session, coat);
    Answer<CoatingSchedule> answer = Coating.plan(job);
    CoatingSchedule coats = answer.fold(given -> given.value(), refused -> null);
    CoatStep first = coats.coats().get(0);
    CoatStep second = coats.coats().get(1);
    Optional<NearMiss> near = NearMiss.of(job, first, second);
    assertEquals(MONDAY.date(), first.start().date());
    double short0 = 15 + coat - session;
    boolean missed = short0 > 0 && short0 <= 30;
    assertEquals(missed, near.isPresent(), "short by " + short0);
    near.ifPresent(
        found -> {
          assertEquals(60 * short0, found.longerSeconds(), 1e-6);
          assertTrue(found.start().isBefore(second.start()));
          assertEquals(found.start().secondsUntil(second.start()), found.soonerSeconds(), 1e-6);
        });
  }
}
