package benchlore.schedules.projectfile;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.project.Habits;
import benchlore.schedules.project.Shop;
import benchlore.schedules.quantity.AsciiText;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.room.Climate;
import benchlore.schedules.room.DailySwing;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.sanding.SandingTool;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.time.Weekday;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the shop, with whatever a plan says of it instead.
 *
 * @param shop the shop's file
 * @param plan the plan's; the shop's again where there is no plan
 */
record ShopReader(FileGroup shop, FileGroup plan) {
  private static final int HOUR_MINUTES = 60;

  /** The plan where it says something of its own, else the shop. */
  FileGroup saying(String key) {
    return plan.has(key) ? plan : shop;
  }

  Shop read() {
    Climate climate = climate();
    return new Shop(
        week(),
        climate,
        RoomAir.ofAirChanges(
            saying("volume").amount("volume"),
            saying("air-changes").number("air-changes"),
            saying("mixing-factor").number("mixing-factor"),
            climate.meanCelsius()),
        saying("ignition").words("ignition", IgnitionSource.values()),
        new SandingShop(
            grades(),
            saying("sanders").words("sanders", SandingTool.values()),
            SandingShop.USUAL_JUMP),
        clamps(),
        saying("people").whole("people"),
        habits());
  }

  private Habits habits() {
    String key = "glue-settles";
    FileGroup file = saying(key);
    return new Habits(
        plan.has("transfer")
            ? OptionalDouble.of(plan.amount("transfer") / 100)
            : OptionalDouble.empty(),
        file.has(key) ? OptionalDouble.of(file.amount(key)) : OptionalDouble.empty());
  }

  FileGroup climateGroup() {
    return saying("climate").group("climate");
  }

  Climate climate() {
    FileGroup f = climateGroup();
    Optional<DailySwing.Heater> heater =
        f.has("heating") ? Optional.of(heater(f.group("heating"))) : Optional.empty();
    List<DailySwing.Night> nights = new ArrayList<>();
    for (FileGroup night : f.groups("nights")) {
      nights.add(night(night));
    }
    nights.sort((one, two) -> one.date().compareTo(two.date()));
    return new DailySwing(f.amount("low"), f.amount("high"), f.amount("humidity"), heater)
        .climate(nights);
  }

  private static DailySwing.Heater heater(FileGroup f) {
    return new DailySwing.Heater(hour(f, "from"), hour(f, "to"), f.amount("at"));
  }

  private static int hour(FileGroup f, String key) {
    return Numeric.round(f.amount(key) / 3_600);
  }

  /** One night that was otherwise. */
  static DailySwing.Night night(FileGroup f) {
    return new DailySwing.Night(
        Date.parse(f.text("date")),
        f.amount("low"),
        f.amount("high"),
        f.has("humidity") ? OptionalDouble.of(f.amount("humidity")) : OptionalDouble.empty(),
        !f.has("heated") || f.flag("heated"));
  }

  ShopWeek week() {
    FileGroup hours = saying("hours").group("hours");
    List<List<ShopWeek.Span>> days = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      List<ShopWeek.Span> spans = new ArrayList<>();
      for (FileGroup.Text span : hours.texts(FileGroup.word(day))) {
        int dash = span.text().indexOf('-');
        int from = minute(span.text().substring(0, dash));
        spans.add(new ShopWeek.Span(from, minute(span.text().substring(dash + 1))));
      }
      days.add(spans);
    }
    List<Date> off = new ArrayList<>();
    for (FileGroup.Text day : saying("days-off").texts("days-off")) {
      off.add(Date.parse(day.text()));
    }
    return new ShopWeek(days, off);
  }

  private static int minute(String clock) {
    int hour = AsciiText.whole(clock.substring(0, 2));
    return hour * HOUR_MINUTES + AsciiText.whole(clock.substring(3));
  }

  private List<Grit> grades() {
    List<Grit> grades = new ArrayList<>();
    for (FileGroup.Text label : saying("grades").texts("grades")) {
      grades.add(grit(label.text()));
    }
    return grades;
  }

  /** A FEPA P grade by its label; {@link FileChecks} has found a label that is none. */
  static Grit grit(String label) {
    for (Grit grit : Grits.all(GritSystem.FEPA_P)) {
      if (grit.label().equals(label)) {
        return grit;
      }
    }
    throw new IllegalArgumentException(label + " is no FEPA P grade");
  }

  GlueUpRequest.Clamps clamps() {
    FileGroup f = saying("clamps").group("clamps");
    return new GlueUpRequest.Clamps(
        f.whole("count"), f.amount("force"), f.amount("caul"), f.amount("jaw"));
  }
}
