package benchlore.schedules.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Solvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What an answer about air says in words: no time of nothing, no mask that it does not name. */
class AirWordsTest {
  private static final int TRIES = 300;

  @Provide
  Arbitrary<AirRequest> request() {
    Arbitrary<Release> release =
        Combinators.combine(
                Arbitraries.doubles().between(0, 20_000),
                Arbitraries.doubles().between(0.0001, 1).ofScale(4),
                Arbitraries.of("toluene", "ethanol", "acetone", "turpentine", "d-limonene"),
                Arbitraries.of(ApplicationMethod.class))
            .as((start, kg, solvent, method) -> coat(start, kg, Solvents.of(solvent), method));
    Arbitrary<RoomAir> room =
        Combinators.combine(
                Arbitraries.doubles().between(10, 1000),
                Arbitraries.doubles().between(0.2, 60),
                Arbitraries.doubles().between(1, 10))
            .as((volume, changes, mixing) -> RoomAir.ofAirChanges(volume, changes, mixing, 20));
    return Combinators.combine(
            room,
            release.list().ofMinSize(1).ofMaxSize(3),
            Arbitraries.of(IgnitionSource.class).list().ofMaxSize(2),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false),
            Arbitraries.of(true, false))
        .as(AirRequest::new);
  }

  private static Release coat(
      double start, double kilogram, Solvent solvent, ApplicationMethod method) {
    List<Release.Share> shares = List.of(new Release.Share(solvent, 1));
    return new Release(start, kilogram, shares, method, Optional.empty());
  }

  @Property(tries = TRIES)
  void nobodyIsToldToComeBackAtOnceOrDuringTheWork(@ForAll("request") AirRequest request) {
    AirSchedule air = AirPlan.of(request);
    for (AirSchedule.ReEntry back : air.reEntries()) {
      boolean told = back.verdict() == AirSchedule.Verdict.AFTER;
      assertEquals(told, back.second().isPresent());
      assertEquals(told, back.verdict().words().isEmpty());
      assertTrue(back.second().orElse(1e9) > 600, "while the coat still goes on");
      assertFalse(told && (request.isocyanate() || request.formaldehyde()));
    }
    for (AirSchedule.ReEntry back : air.afterWork(7_200).reEntries()) {
      assertTrue(back.second().orElse(1e9) > 7_200);
    }
  }

  @Property(tries = TRIES)
  void everyMaskSpokenOfIsOneOfAKind(@ForAll("request") AirRequest request) {
    for (Message note : notes(Air.plan(request))) {
      String text = note.pattern();
      assertFalse(text.contains("respirator named") || text.contains("the respirator"), text);
      assertFalse(text.contains("the mask ") && text.contains("wear the"), text);
      assertFalse(text.contains("until the re-entry time"), text);
    }
  }

  @Property(tries = TRIES)
  void airOverTheLimitsNamesTheMaskOfTheAnswer(@ForAll("request") AirRequest request) {
    if (Air.plan(request) instanceof Answer.Given<AirSchedule> given) {
      Respirator respirator = given.value().respirator().respirator();
      for (Caution caution : given.cautions()) {
        if (caution.code().equals("over-exposure-limit")) {
          assertTrue(caution.measure().pattern().contains(respirator.advice()));
        }
      }
    }
  }

  @Example
  void formaldehydeAndIsocyanateTellNoTime() {
    Release spirit = coat(0, 0.2, Solvents.of("toluene"), ApplicationMethod.BRUSH);
    RoomAir room = RoomAir.ofAirChanges(60, 4, 3, 20);
    assertEquals(
        AirSchedule.Verdict.NOT_COUNTED,
        verdict(new AirRequest(room, List.of(spirit), List.of(), false, true, false)));
    assertEquals(
        AirSchedule.Verdict.NOT_COUNTED,
        verdict(new AirRequest(room, List.of(spirit), List.of(), true, false, false)));
    assertEquals(
        AirSchedule.Verdict.AFTER,
        verdict(new AirRequest(room, List.of(spirit), List.of(), false, false, false)));
  }

  private static AirSchedule.Verdict verdict(AirRequest request) {
    return AirPlan.of(request).reEntries().get(0).verdict();
  }

  private static List<Message> notes(Answer<AirSchedule> answer) {
    List<Message> notes = new ArrayList<>();
    if (answer instanceof Answer.Refused<AirSchedule> refused) {
      for (Refusal reason : refused.reasons()) {
        notes.add(reason.problem());
        notes.add(reason.remedy());
      }
    } else if (answer instanceof Answer.Given<AirSchedule> given) {
      notes.addAll(given.value().respirator().limits());
      for (Caution caution : given.cautions()) {
        notes.add(caution.what());
        notes.add(caution.measure());
      }
    }
    return notes;
  }
}
