package benchlore.generator.site;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.project.Shop;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.time.ShopWeek;
import benchlore.schedules.time.Weekday;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The shop as what stands in a planner's form before anyone touches it. */
final class PlannerShop {
  private static final MathContext WRITTEN = new MathContext(6);
  private static final int WARMEST_HOUR = 15;

  private PlannerShop() {}

  /** Figures by the names of the form's fields, in the fields' own units. */
  static Map<String, String> figures(Shop shop) {
    List<Climate.Reading> hours = shop.climate().hours();
    double low = hours.stream().mapToDouble(Climate.Reading::celsius).min().orElseThrow();
    double high = hours.stream().mapToDouble(Climate.Reading::celsius).max().orElseThrow();
    Map<String, String> figures = new HashMap<>();
    figures.put("low", written(low));
    figures.put("high", written(high));
    figures.put("celsius", written(shop.climate().meanCelsius()));
    figures.put("humidity", written(hours.get(WARMEST_HOUR).relativeHumidityPercent()));
    figures.put("volume", written(shop.room().volume()));
    figures.put("changes", written(shop.room().outdoorFlow() * 3_600 / shop.room().volume()));
    figures.put("mixing", written(shop.room().mixingFactor()));
    figures.put("clamps", Integer.toString(shop.clamps().count()));
    figures.put("force", written(shop.clamps().forceNewton()));
    figures.put("caul", written(shop.clamps().caulDepthMetre() * 1_000));
    figures.put("jaw", written(shop.clamps().headMetre() * 1_000));
    figures.put("people", Integer.toString(shop.people()));
    return figures;
  }

  /** The days of the week with their hours, as 18:30-21:30. */
  static List<Map<String, String>> weekdays(Shop shop) {
    List<Map<String, String>> days = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      List<String> spans = new ArrayList<>();
      for (ShopWeek.Span span : shop.week().days().get(day.daysAfterMonday())) {
        spans.add(clock(span.fromMinuteInclusive()) + "-" + clock(span.toMinuteExclusive()));
      }
      days.add(
          Map.of(
              "value", day.name().toLowerCase(Locale.ROOT),
              "title", day.words(),
              "spans", String.join(", ", spans)));
    }
    return days;
  }

  /** Every P grade, and whether it is on the shelf. */
  static List<Map<String, Object>> grades(Shop shop) {
    List<Map<String, Object>> grades = new ArrayList<>();
    for (Grit grit : Grits.all(GritSystem.FEPA_P)) {
      boolean stocked = shop.sanding().shelf().contains(grit);
      grades.add(Map.of("value", grit.label(), "title", grit.label(), "stocked", stocked));
    }
    return grades;
  }

  /** Names of the sanders there are. */
  static List<String> sanders(Shop shop) {
    return shop.sanding().tools().stream().map(Enum::name).toList();
  }

  /** What can light a vapour, and whether it is there. */
  static List<Map<String, Object>> ignition(Shop shop) {
    List<Map<String, Object>> sources = new ArrayList<>();
    for (IgnitionSource source : IgnitionSource.values()) {
      sources.add(
          Map.of(
              "value", source.name(),
              "word", source.name().toLowerCase(Locale.ROOT).replace('_', '-'),
              "title", Labels.capital(source.words()),
              "there", shop.ignition().contains(source)));
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
