package benchlore.schedules.sanding;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.fail;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.material.Pores;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Ordinary questions that the tests change one thing of. */
final class Questions {
  static final SandingWood CHERRY = new SandingWood(4400, 560, Pores.DIFFUSE, false, false, false);
  static final SandingWood ASH = new SandingWood(5870, 670, Pores.RING, true, false, false);
  static final SandingWood PINE = new SandingWood(1690, 400, Pores.NONE, false, false, true);
  static final List<Grit> SHELF = shelf(80, 100, 120, 150, 180, 220);

  private Questions() {}

  static Grit p(int number) {
    return Grits.find(GritSystem.FEPA_P, number).orElseThrow();
  }

  static List<Grit> shelf(int... numbers) {
    List<Grit> shelf = new ArrayList<>();
    for (int number : numbers) {
      shelf.add(p(number));
    }
    return shelf;
  }

  static SourcedRange grades(double low, double high) {
    return SourcedRange.range(low, high, Unit.COUNT, Provenance.commonPractice("test"));
  }

  static SurfaceWanted film(double low, double high) {
    return new SurfaceWanted(
        grades(low, high), FinishLook.SATIN, Optional.of(grades(320, 400)), 3, false, false);
  }

  static SandingShop orbital(List<Grit> shelf) {
    return new SandingShop(shelf, List.of(SandingTool.RANDOM_ORBIT), SandingShop.USUAL_JUMP);
  }

  static SandingRequest of(StartSurface start) {
    return new SandingRequest(
        start, CHERRY, new SandingArea(1, 0.05, 1), film(180, 220), orbital(SHELF));
  }

  static SandingRequest with(SandingRequest request, SandingWood wood) {
    return new SandingRequest(
        request.start(), wood, request.area(), request.wanted(), request.shop());
  }

  static SandingRequest with(SandingRequest request, SurfaceWanted wanted) {
    return new SandingRequest(
        request.start(), request.wood(), request.area(), wanted, request.shop());
  }

  static SandingRequest with(SandingRequest request, SandingArea area) {
    return new SandingRequest(
        request.start(), request.wood(), area, request.wanted(), request.shop());
  }

  static <T> T given(Answer<T> answer) {
    return answer.fold(Answer.Given::value, refused -> fail("refused: " + refused.reasons()));
  }

  static <T> List<String> refused(Answer<T> answer) {
    assertInstanceOf(Answer.Refused.class, answer);
    List<String> inputs = new ArrayList<>();
    List<Refusal> reasons = answer.fold(given -> List.of(), Answer.Refused::reasons);
    reasons.forEach(reason -> inputs.add(reason.input()));
    return inputs;
  }

  static <T> List<String> cautions(Answer<T> answer) {
    List<String> codes = new ArrayList<>();
    List<Caution> all = answer.fold(Answer.Given::cautions, refused -> List.of());
    all.forEach(c -> codes.add(c.code()));
    return codes;
  }

  static List<String> labels(List<SandingPass> passes) {
    List<String> labels = new ArrayList<>();
    passes.forEach(pass -> labels.add(pass.grit().label()));
    return labels;
  }
}
