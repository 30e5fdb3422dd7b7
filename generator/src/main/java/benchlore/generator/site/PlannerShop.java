package benchlore.generator.site;

import benchlore.generator.page.ShopForm;
import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.project.Shop;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.time.Weekday;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The shop as what stands in a planner's form before anyone touches it. */
final class PlannerShop {
  private static final MathContext WRITTEN = new MathContext(6);
  private static final int WARMEST_HOUR = 15;

  private PlannerShop() {}

  static ShopForm form(Shop shop) {
    ShopForm.Clamps clamps =
        new ShopForm.Clamps(
            Integer.toString(shop.clamps().count()),
            written(shop.clamps().forceNewton()),
            written(shop.clamps().caulDepthMetre() * 1_000),
            written(shop.clamps().headMetre() * 1_000));
    return new ShopForm(
        room(shop),
        clamps,
        Integer.toString(shop.people()),
        weekdays(shop),
        grades(shop),
        shop.sanding().tools().stream().map(Enum::name).toList(),
        ignition(shop));
  }

  private static ShopForm.Room room(Shop shop) {
    List<Climate.Reading> hours = shop.climate().hours();
    double low = hours.stream().mapToDouble(Climate.Reading::celsius).min().orElseThrow();
    double high = hours.stream().mapToDouble(Climate.Reading::celsius).max().orElseThrow();
    return new ShopForm.Room(
        written(low),
        written(high),
        written(shop.climate().meanCelsius()),
        written(hours.get(WARMEST_HOUR).relativeHumidityPercent()),
        written(shop.room().volume()),
        written(shop.room().outdoorFlow() * 3_600 / shop.room().volume()),
        written(shop.room().mixingFactor()));
  }

  /** The days of the week with their hours, as 18:30-21:30. */
  private static List<ShopForm.Day> weekdays(Shop shop) {
    List<ShopForm.Day> days = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      List<String> spans = new ArrayList<>();
      for (ShopWeek.Span span : shop.week().days().get(day.daysAfterMonday())) {
        spans.add(clock(span.fromMinuteInclusive()) + "-" + clock(span.toMinuteExclusive()));
      }
      days.add(
          new ShopForm.Day(
              day.name().toLowerCase(Locale.ROOT), day.words(), String.join(", ", spans)));
    }
    return days;
  }

  /** Every P grade, and whether it is on the shelf. */
  private static List<ShopForm.Grade> grades(Shop shop) {
    return Grits.all(GritSystem.FEPA_P).stream()
        .map(grit -> new ShopForm.Grade(grit.label(), shop.sanding().shelf().contains(grit)))
        .toList();
  }

  /** What can light a vapour, and whether it is there. */
  private static List<ShopForm.Ignition> ignition(Shop shop) {
    List<ShopForm.Ignition> sources = new ArrayList<>();
    for (IgnitionSource source : IgnitionSource.values()) {
      sources.add(
          new ShopForm.Ignition(
              source.name(),
              source.name().toLowerCase(Locale.ROOT).replace('_', '-'),
              Labels.capital(source.words()),
              shop.ignition().contains(source)));
    }
    return sources;
  }

  private static String clock(int minute) {
    return String.format(Locale.ROOT, "%02d:%02d", minute / 60, minute % 60);
  }

  private static String written(double value) {
    return new BigDecimal(value).round(WRITTEN).stripTrailingZeros().toPlainString();
  }
}
