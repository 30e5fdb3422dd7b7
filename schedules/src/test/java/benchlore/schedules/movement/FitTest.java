package benchlore.schedules.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.movement.FitSchedule.Clearance;
import benchlore.schedules.movement.FitSchedule.Slot;
import benchlore.schedules.movement.FitSchedule.TapeStack;
import benchlore.schedules.quantity.Provenance;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class FitTest {
  private static Answer.Given<FitSchedule> given(FitRequest request) {
    return Fit.plan(request)
        .fold(
            g -> g,
            refused -> {
              throw new AssertionError(refused.reasons().toString());
            });
  }

  private static FitSchedule schedule(FitRequest request) {
    return given(request).value();
  }

  private static List<String> codes(FitRequest request) {
    return given(request).cautions().stream().map(Caution::code).toList();
  }

  @Test
  void doorGapIsFilmsAndGrowthAndSlip() {
    FitSchedule schedule = schedule(Woods.door().withOpening(Woods.opening()));
    double damp = Moisture.equilibriumPercent(24, 60);
    double dry = Moisture.equilibriumPercent(21, 25);
    double coefficient = 7.1 / (3000 - 20 * 7.1);
    double swell = 0.4 * coefficient * (damp - 8);
    double shrink = 0.4 * shrinking(coefficient, dry);
    assertEquals(swell, schedule.movement().swellMetre(), 1e-12);
    assertEquals(shrink, schedule.movement().shrinkMetre(), 1e-12);
    assertEquals(swell + shrink, schedule.movement().yearMetre(), 1e-12);
    Clearance clearance = schedule.clearance().orElseThrow();
    assertEquals(150, clearance.filmMicron(), 1e-9);
    assertEquals(0.00015 + swell + 0.0005, clearance.gapMetre(), 1e-12);
    assertEquals(2 * 0.00065 + swell, clearance.openingMinusPartMetre(), 1e-12);
    assertEquals(0.0005 + swell + shrink, clearance.drySeasonGapMetre(), 1e-12);
  }

  /** Wood Handbook chapter 13: thickness moves by the radial coefficient in a flat-sawn board. */
  @Test
  void thicknessOfAFlatBoardMovesRadially() {
    FitRequest flat = board(0.025, 8, RingAngle.of(0));
    double points = Moisture.equilibriumPercent(24, 60) - 8;
    double dry = Moisture.equilibriumPercent(21, 25);
    FitSchedule.Travel travel = schedule(flat).movement();
    double thick = 0.00158 * points + shrinking(0.00158, dry);
    double wide = 0.00369 * points + shrinking(0.00369, dry);
    assertEquals(0.025 * thick, travel.thicknessYearMetre(), 1e-12);
    assertEquals(0.2 * wide, travel.yearMetre(), 1e-12);
  }

  /** From 8 % by the handbook's first form to 6 %, and on below it by the second. */
  private static double shrinking(double coefficient, double dryPercent) {
    double atSix = 1 - coefficient * 2;
    return coefficient * 2 + atSix * (6 - dryPercent) / (1 / coefficient - 10 + 6);
  }

  @Test
  void tapeStandsForAtLeastTheGapClosestFirst() {
    Clearance clearance =
        schedule(Woods.door(0.1, 8).withOpening(Woods.opening())).clearance().orElseThrow();
    assertFalse(clearance.stacks().isEmpty());
    double before = 0;
    for (TapeStack stack : clearance.stacks()) {
      assertTrue(stack.gapMicron() >= clearance.gapMetre() * 1e6 - 1e-3);
      assertTrue(stack.gapMicron() - stack.tape().thicknessMicron() < clearance.gapMetre() * 1e6);
      assertTrue(stack.gapMicron() >= before);
      assertTrue(stack.layers() <= FitFigures.MOST_LAYERS);
      before = stack.gapMicron();
    }
  }

  @Test
  void wideGapAsksForASlipInsteadOfTape() {
    Opening thin =
        new Opening(
            Film.none(),
            Film.none(),
            0.002,
            Opening.Hanging.CENTRED,
            List.of(Tape.measured("thin", 50)));
    FitRequest request = Woods.door().withOpening(thin);
    assertTrue(schedule(request).clearance().orElseThrow().stacks().isEmpty());
    assertTrue(codes(request).contains("gap-too-wide-for-tape"));
  }

  @Test
  void narrowCleatMayBeFixedTightWideTopMayNot() {
    Panel near = new Panel(0.004, List.of(0.0, 0.01));
    Panel far = new Panel(0.004, List.of(0.0, 0.15, 0.3));
    assertTrue(schedule(Woods.door().withPanel(near)).fixing().orElseThrow().rigidAllowed());
    FitRequest wide = Woods.door().withPanel(far);
    assertFalse(schedule(wide).fixing().orElseThrow().rigidAllowed());
    assertTrue(codes(wide).contains("panel-must-move"));
  }

  @Test
  void slotsGrowWithDistanceAndHoldTheTravel() {
    Panel panel = new Panel(0.005, List.of(0.0, 0.2, 0.4));
    FitSchedule schedule = schedule(Woods.door().withPanel(panel));
    List<Slot> slots = schedule.fixing().orElseThrow().slots();
    assertEquals(0.006, slots.get(0).lengthMetre(), 1e-12);
    Slot last = slots.get(2);
    assertEquals(schedule.movement().swellMetre(), last.inwardMetre(), 1e-12);
    assertEquals(schedule.movement().shrinkMetre(), last.outwardMetre(), 1e-12);
    assertEquals(0.006 + schedule.movement().yearMetre(), last.lengthMetre(), 1e-12);
    assertTrue(slots.get(1).lengthMetre() < last.lengthMetre());
  }

  @Test
  void settledWoodNeedsNoTimeAndColdWoodIsWarnedOf() {
    double shop = Moisture.equilibriumPercent(20, 45);
    assertEquals(0, schedule(Woods.door(0.4, shop)).settling().highSecond());
    FitRequest cold =
        new FitRequest(
            Woods.cherry(),
            RingAngle.FLAT,
            0.4,
            0.02,
            8,
            new SteadyAir(5, 80),
            PlaceClimate.UNHEATED_SHED.seasons(),
            Optional.empty(),
            Optional.empty());
    assertTrue(codes(cold).contains("cold-wood-settles-slowly"));
    // The handbook's second form serves a damp shed; only near green wood does no line hold.
    assertFalse(codes(cold).contains("movement-outside-straight-range"));
  }

  @Test
  void nearGreenWoodMovementIsNoLongerALine() {
    Seasons fog =
        new Seasons(new SteadyAir(15, 60), new SteadyAir(10, 99), Provenance.fromMemory("test"));
    FitRequest request =
        new FitRequest(
            Woods.cherry(),
            RingAngle.FLAT,
            0.4,
            0.02,
            12,
            new SteadyAir(15, 60),
            fog,
            Optional.empty(),
            Optional.empty());
    assertTrue(Moisture.equilibriumPercent(10, 99) > 25);
    assertTrue(codes(request).contains("movement-outside-straight-range"));
  }

  /** Four points off in 25 mm: between one and three weeks, as shops report. */
  @Test
  void settlingTimeOfInchBoardsIsWeeks() {
    FitRequest inch =
        new FitRequest(
            Woods.redOak(),
            RingAngle.FLAT,
            0.2,
            0.025,
            Moisture.equilibriumPercent(20, 45) + 4,
            new SteadyAir(20, 45),
            PlaceClimate.HEATED_ROOM.seasons(),
            Optional.empty(),
            Optional.empty());
    FitSchedule.Settling settling = schedule(inch).settling();
    assertEquals(6.9, settling.lowSecond() / 86_400, 0.1);
    assertEquals(20.8, settling.highSecond() / 86_400, 0.1);
  }

  @Test
  void everyFigureHasWorking() {
    FitRequest request =
        Woods.door().withOpening(Woods.opening()).withPanel(new Panel(0.004, List.of(0.1)));
    List<String> names =
        given(request).working().stream().map(line -> line.result().name()).toList();
    assertTrue(
        names.containsAll(
            List.of(
                "moisture of the shop",
                "moisture in the dry season",
                "moisture in the damp season",
                "movement of this board",
                "gap on each moving side",
                "longest time to settle",
                "slot")));
    assertTrue(codes(request).contains("dry-fit-first"));
    assertTrue(codes(request).contains("seasons-are-a-guess"));
    assertFalse(
        codes(with(RingAngle.FLAT, new SteadyAir(20, 45), 0.02)).contains("seasons-are-a-guess"));
  }

  static Stream<FitRequest> nonsense() {
    List<FitRequest> all = new ArrayList<>();
    for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1, 0, 1e9}) {
      all.add(Woods.door(bad, 8));
      all.add(Woods.door(0.4, bad));
      all.add(Woods.door().withPanel(new Panel(bad, List.of(0.1))));
      all.add(
          Woods.door()
              .withOpening(
                  new Opening(
                      Film.none(), Film.none(), bad, Opening.Hanging.CENTRED, Tape.common())));
      all.add(
          Woods.door()
              .withOpening(
                  new Opening(
                      Film.none(),
                      Film.none(),
                      0.001,
                      Opening.Hanging.CENTRED,
                      List.of(Tape.measured("bad", bad)))));
    }
    all.add(Woods.door().withPanel(new Panel(0.004, List.of())));
    all.add(Woods.door().withPanel(new Panel(0.004, List.of(0.5))));
    all.add(Woods.door().withPanel(new Panel(0.004, List.of(Double.NaN))));
    all.add(
        Woods.door()
            .withOpening(
                new Opening(
                    new Film(Double.NaN, -1, 200),
                    Film.none(),
                    0.001,
                    Opening.Hanging.CENTRED,
                    List.of())));
    all.add(with(RingAngle.of(91), new SteadyAir(20, 45), 0.02));
    all.add(with(new RingAngle(60, 30), new SteadyAir(20, 45), 0.02));
    all.add(with(RingAngle.of(Double.NaN), new SteadyAir(20, 45), 0.02));
    all.add(with(RingAngle.FLAT, new SteadyAir(500, 45), 0.02));
    all.add(with(RingAngle.FLAT, new SteadyAir(20, -3), 0.02));
    all.add(with(RingAngle.FLAT, new SteadyAir(20, 45), 0));
    return all.stream();
  }

  private static FitRequest with(RingAngle rings, SteadyAir air, double thickness) {
    return new FitRequest(
        Woods.cherry(),
        rings,
        0.4,
        thickness,
        8,
        air,
        Seasons.of(air, air),
        Optional.empty(),
        Optional.empty());
  }

  @ParameterizedTest
  @MethodSource("nonsense")
  void refusesNonsense(FitRequest request) {
    assertInstanceOf(Answer.Refused.class, Fit.plan(request));
  }

  @Test
  void tellsEveryFaultAtOnce() {
    FitRequest bad = with(RingAngle.of(-1), new SteadyAir(500, Double.NaN), -1);
    int reasons = Fit.plan(bad).fold(g -> 0, refused -> refused.reasons().size());
    assertEquals(9, reasons);
  }

  @Test
  void nullIsTheProgrammersFault() {
    assertThrows(NullPointerException.class, () -> Woods.door().withOpening(null));
    assertThrows(NullPointerException.class, () -> Seasons.of(null, new SteadyAir(20, 50)));
  }

  @Property(tries = 200)
  boolean gapGrowsWithMovementAndIsNeverNegative(
      @ForAll @DoubleRange(min = 0.05, max = 1.4) double width,
      @ForAll @DoubleRange(min = 4, max = 10) double moisture) {
    Clearance narrow =
        schedule(Woods.door(width, moisture).withOpening(Woods.opening()))
            .clearance()
            .orElseThrow();
    Clearance wide =
        schedule(Woods.door(2 * width, moisture).withOpening(Woods.opening()))
            .clearance()
            .orElseThrow();
    return narrow.gapMetre() > 0 && wide.gapMetre() > narrow.gapMetre();
  }

  @Property(tries = 200)
  boolean moreLayersGiveMoreGap(
      @ForAll @DoubleRange(min = 0.1, max = 3) double slipMillimetre,
      @ForAll @DoubleRange(min = 40, max = 500) double tapeMicron) {
    List<TapeStack> thin = stacks(slipMillimetre / 1000, tapeMicron);
    List<TapeStack> more = stacks(slipMillimetre / 1000 + 0.0005, tapeMicron);
    return more.isEmpty()
        || (more.get(0).layers() >= thin.get(0).layers()
            && (more.get(0).layers() == thin.get(0).layers()
                || more.get(0).gapMicron() > thin.get(0).gapMicron()));
  }

  @Property(tries = 200)
  boolean oneLayerLessWouldBeTooThin(
      @ForAll @DoubleRange(min = 0.1, max = 3) double slipMillimetre,
      @ForAll @DoubleRange(min = 40, max = 500) double tapeMicron) {
    Opening opening = slipping(slipMillimetre / 1000, tapeMicron);
    Clearance clearance =
        schedule(Woods.door(0.05, 8).withOpening(opening)).clearance().orElseThrow();
    double needed = clearance.gapMetre() * 1e6;
    return clearance.stacks().stream()
        .allMatch(
            stack ->
                stack.gapMicron() >= needed - 1e-3 && (stack.layers() - 1) * tapeMicron < needed);
  }

  private static List<TapeStack> stacks(double slip, double tapeMicron) {
    FitRequest request = Woods.door(0.05, 8).withOpening(slipping(slip, tapeMicron));
    return schedule(request).clearance().orElseThrow().stacks();
  }

  private static Opening slipping(double slip, double tapeMicron) {
    return new Opening(
        Film.none(),
        Film.none(),
        slip,
        Opening.Hanging.CENTRED,
        List.of(Tape.measured("measured", tapeMicron)));
  }

  @Property(tries = 200)
  boolean thickerBoardsSettleLater(
      @ForAll @DoubleRange(min = 0.01, max = 0.09) double thickness,
      @ForAll @DoubleRange(min = 3, max = 25) double moisture) {
    FitSchedule.Settling thin = schedule(board(thickness, moisture)).settling();
    FitSchedule.Settling thick = schedule(board(thickness + 0.01, moisture)).settling();
    return thin.lowSecond() >= 0
        && thin.highSecond() >= thin.lowSecond()
        && thick.highSecond() >= thin.highSecond();
  }

  private static FitRequest board(double thickness, double moisture) {
    return board(thickness, moisture, RingAngle.RIFT);
  }

  private static FitRequest board(double thickness, double moisture, RingAngle rings) {
    return new FitRequest(
        Woods.redOak(),
        rings,
        0.2,
        thickness,
        moisture,
        new SteadyAir(20, 45),
        PlaceClimate.HEATED_ROOM.seasons(),
        Optional.empty(),
        Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 1, 2, 3, 6})
  void filmGrowsWithCoats(double coats) {
    assertEquals(coats * 30, new Film(coats, 100, 30).dryFilmMicron(), 1e-9);
  }
}
