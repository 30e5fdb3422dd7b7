package benchlore.schedules.glueup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpRequest.Pace;
import benchlore.schedules.glueup.GlueUpRequest.Wood;
import benchlore.schedules.glueup.GlueUpSchedule.Batch;
import benchlore.schedules.glueup.GlueUpSchedule.Position;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.glueup.GlueUpSchedule.Share;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Adhesive.Setting;
import benchlore.schedules.material.DensityClass;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.Climate.Reading;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** What must hold of any glue-up. */
class GlueUpPropertiesTest {
  private static final int TRIES = 200;

  @Property(tries = TRIES)
  void moreClampsAreNeverSlower(
      @ForAll @IntRange(min = 5, max = 25) int clamps,
      @ForAll @IntRange(min = 1, max = 6) int more,
      @ForAll @IntRange(min = 1, max = 6) int boards,
      @ForAll @IntRange(min = 1, max = 5) int rails,
      @ForAll @Scale(3) @DoubleRange(min = 16, max = 30) double warmest) {
    GlueUpRequest request =
        Samples.in(
            Samples.request(Samples.yellow().build(), Samples.panel(boards), Samples.rails(rails)),
            Climate.swing(12, warmest, 50));
    GlueUpSchedule few = Samples.given(Samples.with(request, new Clamps(clamps, 2500, 0, 0)));
    GlueUpSchedule many =
        Samples.given(Samples.with(request, new Clamps(clamps + more, 2500, 0, 0)));
    assertTrue(many.clampsOff().afterSecond() <= few.clampsOff().afterSecond());
  }

  @Property(tries = TRIES)
  void warmerIsNeverLongerOpenNorLongerInClamps(
      @ForAll @Scale(3) @DoubleRange(min = 9, max = 34) double celsius,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 5) double more,
      @ForAll @Scale(3) @DoubleRange(min = 5, max = 95) double humidity) {
    GlueUpRequest request = Samples.request(Samples.epoxy().build(), Samples.panel(1));
    GlueUpSchedule cool = Samples.given(Samples.in(request, Climate.steady(celsius, humidity)));
    GlueUpSchedule warm =
        Samples.given(Samples.in(request, Climate.steady(celsius + more, humidity)));
    assertTrue(warm.assembly().openSecond() <= cool.assembly().openSecond() + 1e-6);
    assertTrue(warm.assembly().totalSecond() <= cool.assembly().totalSecond() + 1e-6);
    assertTrue(warm.clampsOff().afterSecond() <= cool.clampsOff().afterSecond());
    assertTrue(warm.machine().afterSecond() <= cool.machine().afterSecond());
    assertTrue(warm.fullLoad().afterSecond() <= cool.fullLoad().afterSecond());
  }

  @Property(tries = TRIES)
  void warmthAndDampActTheRightWayOnEveryKindOfSetting(
      @ForAll Setting setting,
      @ForAll @Scale(3) @DoubleRange(min = 9, max = 45) double celsius,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 10) double more,
      @ForAll @Scale(3) @DoubleRange(min = 5, max = 95) double humidity,
      @ForAll @Scale(3) @DoubleRange(min = 3, max = 20) double moisture) {
    Samples.AdhesiveBuilder builder = Samples.yellow();
    builder.setting = setting;
    builder.q10 = Optional.of(Samples.range(1.5, 2.5, Unit.RATIO));
    Adhesive adhesive = builder.build();
    Wood wood = new Wood(600, false, List.of(moisture), 0);
    Wood damper = new Wood(600, false, List.of(moisture + more), 0);
    Reading cool = new Reading(celsius, humidity);
    Reading warm = new Reading(celsius + more, humidity);
    double setCool = SettingRates.setting(adhesive, wood).in(cool);
    double openCool = SettingRates.open(adhesive, wood).in(cool);
    assertTrue(setCool > 0 && openCool > 0);
    assertTrue(SettingRates.setting(adhesive, wood).in(warm) >= setCool);
    assertTrue(SettingRates.setting(adhesive, damper).in(cool) <= setCool);
    assertTrue(SettingRates.open(adhesive, damper).in(cool) <= openCool);
    assertTrue(
        setting == Setting.COOLING || SettingRates.open(adhesive, wood).in(warm) >= openCool);
    assertTrue(SettingRates.machining().in(warm) >= SettingRates.machining().in(cool));
  }

  @Property(tries = TRIES)
  void moreJointNeverNeedsLessGlueNorFewerClamps(
      @ForAll @Scale(3) @DoubleRange(min = 0.01, max = 1.5) double length,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.5) double longer,
      @ForAll @Scale(3) @DoubleRange(min = 0.005, max = 0.05) double width,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.02) double wider) {
    GlueUpSchedule small = of(length, width);
    GlueUpSchedule large = of(length + longer, width + wider);
    assertTrue(large.glue().massKilogram() >= small.glue().massKilogram());
    assertTrue(large.glue().volumeCubicMetre() >= small.glue().volumeCubicMetre());
    assertTrue(large.rows().get(0).neededForForce() >= small.rows().get(0).neededForForce());
    assertTrue(large.rows().get(0).neededForSpacing() >= small.rows().get(0).neededForSpacing());
  }

  private static GlueUpSchedule of(double length, double width) {
    Joint joint = new Joint("edge", length, width, 1, Arrangement.IN_LINE, 0.1, 0);
    GlueUpRequest request = Samples.request(Samples.epoxy().build(), joint);
    return Samples.given(Samples.with(request, new Clamps(40, 3000, 0, 0)));
  }

  @Property(tries = TRIES)
  void everyBatchClosesInTimeAndNothingIsLost(
      @ForAll @IntRange(min = 1, max = 10) int boards,
      @ForAll @IntRange(min = 1, max = 12) int rails,
      @ForAll @IntRange(min = 1, max = 3) int people,
      @ForAll @Scale(3) @DoubleRange(min = 10, max = 35) double celsius) {
    GlueUpRequest request =
        Samples.with(
            Samples.in(
                Samples.request(
                    Samples.yellow().build(), Samples.panel(boards), Samples.rails(rails)),
                Climate.steady(celsius, 50)),
            Pace.usual(people));
    GlueUp.plan(request)
        .fold(
            given -> check(request, given.value(), boards + rails),
            refused -> assertRefusedFor(refused, "pace"));
  }

  private static boolean assertRefusedFor(Answer.Refused<GlueUpSchedule> refused, String input) {
    assertEquals(input, refused.reasons().get(0).input());
    return true;
  }

  private static boolean check(GlueUpRequest request, GlueUpSchedule plan, int joints) {
    int found = 0;
    double mass = 0;
    for (Batch batch : plan.batches()) {
      for (Share share : batch.shares()) {
        found = found + share.count();
      }
      mass = mass + batch.massKilogram();
      double work = batch.spreadSecond() + batch.closeSecond();
      assertTrue(work <= plan.assembly().totalSecond() + 1e-6);
      assertTrue(batch.clamps() <= request.clamps().count());
      assertTrue(!batch.clampsOff().isBefore(batch.tight()));
    }
    assertEquals(joints, found);
    assertEquals(plan.glue().massKilogram(), mass, 1e-9);
    assertTrue(plan.clampsOff().afterSecond() <= plan.handle().afterSecond());
    assertTrue(plan.handle().afterSecond() <= plan.machine().afterSecond());
    assertTrue(plan.handle().afterSecond() <= plan.fullLoad().afterSecond());
    return true;
  }

  @Property(tries = TRIES)
  void clampsStandOnTheJointInOrderNeverTooFarApart(
      @ForAll @Scale(3) @DoubleRange(min = 0.005, max = 3) double length,
      @ForAll @Scale(3) @DoubleRange(min = 0.002, max = 0.3) double backing,
      @ForAll @Scale(3) @DoubleRange(min = 0, max = 0.1) double caul) {
    Joint joint = new Joint("edge", length, 0.02, 1, Arrangement.IN_LINE, backing, 0);
    Clamps clamps = new Clamps(1000, 2500, caul, 0);
    GlueUpSchedule.Pressure pressure =
        new GlueUpSchedule.Pressure(DensityClass.HIGH, 5e5, 1e6, 7.5e5);
    Row row = ClampRows.row(joint, clamps, pressure, true);
    assertEquals(row.count(), row.positions().size());
    double last = -row.spacingLimitMetre() / 2;
    boolean side = false;
    for (Position position : row.positions()) {
      assertTrue(position.alongMetre() > 0 && position.alongMetre() < length);
      assertTrue(position.alongMetre() - last <= row.spacingLimitMetre() + 1e-9);
      assertTrue(position.under() != side);
      side = position.under();
      last = position.alongMetre();
    }
    assertTrue(length - last <= row.spacingLimitMetre() / 2 + 1e-9);
    assertTrue(row.pressurePascal() <= pressure.highPascal());
  }

  @Property(tries = TRIES)
  void anyNumbersGiveAnAnswerOrARefusal(
      @ForAll double length,
      @ForAll double force,
      @ForAll double moisture,
      @ForAll int count,
      @ForAll double pace) {
    GlueUpRequest request =
        new GlueUpRequest(
            Samples.yellow().build(),
            List.of(new Joint("any", length, 0.02, count, Arrangement.SEPARATE, length, 0)),
            new Wood(moisture, true, List.of(moisture), length),
            new Clamps(count, force, length, length),
            Climate.steady(20, 50),
            Samples.NINE,
            new Pace(pace, pace, pace, count));
    boolean answered =
        GlueUp.plan(request).fold(given -> true, refused -> !refused.reasons().isEmpty());
    assertTrue(answered);
  }
}
