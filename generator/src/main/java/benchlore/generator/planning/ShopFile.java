package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.air.RoomAir;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.project.Shop;
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
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Reads the shop, with whatever a plan says of it instead. */
final class ShopFile {
  private final Facts shop;
  private final Facts plan;

  ShopFile(Facts shop, Facts plan) {
    this.shop = shop;
    this.plan = plan;
  }

  Shop shop() {
    Climate climate = climate();
    double changes = Double.parseDouble(saying("air-changes").words("air-changes"));
    double mixing = Double.parseDouble(saying("mixing-factor").words("mixing-factor"));
    double volume = Amount.of(saying("volume").words("volume"));
    return new Shop(
        week(),
        climate,
        RoomAir.ofAirChanges(volume, changes, mixing, climate.meanCelsius()),
        saying("ignition").wordList("ignition", IgnitionSource.class),
        new SandingShop(
            grades(),
            saying("sanders").wordList("sanders", SandingTool.class),
            SandingShop.USUAL_JUMP),
        clamps(),
        Integer.parseInt(saying("people").words("people")));
  }

  /** The plan where it says something of its own, else the shop. */
  Facts saying(String key) {
    return plan.find(key).isPresent() ? plan : shop;
  }

  Climate climate() {
    Facts f = saying("climate").group("climate");
    return new DailySwing(
            Amount.of(f.words("low")),
            Amount.of(f.words("high")),
            Amount.of(f.words("humidity")),
            f.find("heating").map(fact -> heater(f.group("heating"))))
        .climate(nights(f));
  }

  private static DailySwing.Heater heater(Facts f) {
    return new DailySwing.Heater(
        hour(f.words("from")), hour(f.words("to")), Amount.of(f.words("at")));
  }

  /** In order of their dates. */
  private static List<DailySwing.Night> nights(Facts climate) {
    return climate.groups("nights").stream()
        .map(ShopFile::night)
        .sorted(Comparator.comparing(DailySwing.Night::date))
        .toList();
  }

  /** One night that was otherwise. */
  static DailySwing.Night night(Facts f) {
    String humidity = f.words("humidity");
    return new DailySwing.Night(
        Date.parse(f.words("date")),
        Amount.of(f.words("low")),
        Amount.of(f.words("high")),
        humidity.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(Amount.of(humidity)),
        f.find("heated").isEmpty() || f.flag("heated"));
  }

  private static int hour(String text) {
    return Integer.parseInt(text.substring(0, text.indexOf(' ')));
  }

  ShopWeek week() {
    Facts hours = saying("hours").group("hours");
    List<List<ShopWeek.Span>> days = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      List<ShopWeek.Span> spans = new ArrayList<>();
      for (String span : hours.list(day.name().toLowerCase(Locale.ROOT))) {
        int dash = span.indexOf('-');
        spans.add(
            new ShopWeek.Span(minute(span.substring(0, dash)), minute(span.substring(dash + 1))));
      }
      days.add(spans);
    }
    List<String> off = saying("days-off").list("days-off");
    return new ShopWeek(days, off.stream().map(Date::parse).toList());
  }

  private static int minute(String clock) {
    return Integer.parseInt(clock.substring(0, 2)) * 60 + Integer.parseInt(clock.substring(3));
  }

  private List<Grit> grades() {
    List<Grit> grades = new ArrayList<>();
    for (String label : saying("grades").list("grades")) {
      grades.add(grit(label));
    }
    return grades;
  }

  /** A FEPA P grade by its label; {@link PlanChecks} has found a label that is none. */
  static Grit grit(String label) {
    return Grits.find(GritSystem.FEPA_P, Integer.parseInt(label.substring(1))).orElseThrow();
  }

  GlueUpRequest.Clamps clamps() {
    Facts f = saying("clamps").group("clamps");
    return new GlueUpRequest.Clamps(
        Integer.parseInt(f.words("count")),
        Amount.of(f.words("force")),
        Amount.of(f.words("caul")),
        Amount.of(f.words("jaw")));
  }
}
