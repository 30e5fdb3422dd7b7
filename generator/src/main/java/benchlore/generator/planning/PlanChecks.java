package benchlore.generator.planning;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Problem;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.time.Date;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What no schema can find in a plan and its shop: days, grades and figures that are none. */
final class PlanChecks {
  private final Facts plan;
  private final Facts shop;
  private final Library library;
  private final Set<Problem> problems = new LinkedHashSet<>();

  private PlanChecks(Facts plan, Facts shop, Library library) {
    this.plan = plan;
    this.shop = shop;
    this.library = library;
  }

  /** Every problem, each at its field. */
  static List<Problem> of(Facts plan, Facts shop, Library library) {
    PlanChecks checks = new PlanChecks(plan, shop, library);
    checks.days();
    checks.hours();
    checks.climate();
    checks.grades();
    checks.finish();
    checks.figures();
    return List.copyOf(checks.problems);
  }

  /** Every problem of a shop that no plan says otherwise about. */
  static List<Problem> ofShop(Facts shop, Library library) {
    PlanChecks checks = new PlanChecks(shop, shop, library);
    checks.days();
    checks.hours();
    checks.climate();
    checks.grades();
    if (checks.problems.isEmpty()) {
      checks.problems.addAll(EngineRefusal.of(shop, new ShopFile(shop, shop)::shop));
    }
    return List.copyOf(checks.problems);
  }

  private void days() {
    plan.find("start").ifPresent(start -> day((Fact.Words) start, () -> PlanFile.start(plan)));
    for (Facts facts : List.of(plan, shop)) {
      for (Fact.Words day : facts.wordItems("days-off")) {
        day(day, () -> Date.parse(day.text()));
      }
    }
  }

  private void day(Fact.Words day, Runnable reading) {
    if (!EngineRefusal.of(plan, reading).isEmpty()) {
      problems.add(
          day.spot()
              .problem("`" + day.text() + "` is no day", "Write a day that is in the calendar."));
    }
  }

  private void hours() {
    Facts hours = new ShopFile(shop, plan).saying("hours").group("hours");
    for (String weekday : hours.data().facts().keySet()) {
      for (Fact.Words span : hours.wordItems(weekday)) {
        String[] ends = span.text().split("-", -1);
        if (ends[0].compareTo(ends[1]) >= 0) {
          problems.add(
              span.spot()
                  .problem(
                      "the hours `" + span.text() + "` run backward",
                      "Write the earlier end first; split hours that pass midnight."));
        }
      }
    }
  }

  private void climate() {
    Facts climate = new ShopFile(shop, plan).saying("climate").group("climate");
    lowAndHigh(climate, "low of the day");
    Set<String> dates = new LinkedHashSet<>();
    for (Facts night : climate.groups("nights")) {
      String date = night.words("date");
      night.find("date").ifPresent(fact -> day((Fact.Words) fact, () -> Date.parse(date)));
      lowAndHigh(night, "low of this night");
      if (!dates.add(date)) {
        problems.add(
            night
                .spot("date")
                .problem("the night of `" + date + "` stands here twice", "Leave one of them."));
      }
    }
  }

  private void lowAndHigh(Facts f, String what) {
    if (Amount.of(f.words("low")) > Amount.of(f.words("high"))) {
      problems.add(
          f.spot("low")
              .problem(
                  "the " + what + ", `" + f.words("low") + "`, is above its high",
                  "Write the colder reading here."));
    }
  }

  private void grades() {
    for (Facts facts : List.of(plan, shop)) {
      facts.wordItems("grades").forEach(this::grade);
    }
    for (Facts part : plan.groups("parts")) {
      part.group("surface").find("sanded").ifPresent(fact -> grade((Fact.Words) fact));
    }
  }

  private void grade(Fact.Words label) {
    List<Grit> grits = Grits.all(GritSystem.FEPA_P);
    if (grits.stream().noneMatch(grit -> grit.label().equals(label.text()))) {
      double number = Double.parseDouble(label.text().substring(1));
      String near =
          grits.stream()
              .sorted(Comparator.comparingDouble(grit -> Math.abs(grit.number() - number)))
              .limit(2)
              .map(Grit::label)
              .collect(Collectors.joining(" and "));
      problems.add(
          label
              .spot()
              .problem(
                  "`" + label.text() + "` is no FEPA P grade", "The nearest are " + near + "."));
    }
  }

  private void finish() {
    Facts finish = plan.group("finish");
    LibraryRecord record = library.find(Kind.FINISHES, finish.words("record")).orElseThrow();
    if (EngineData.finish(record).isEmpty()) {
      problems.add(
          finish
              .spot("record")
              .problem(
                  "`" + record.id() + "` carries no drying figures, so no coats can be planned",
                  "Name a finish that goes on in coats, or give this one its figures."));
    }
  }

  private void night(Facts night) {
    for (String key : List.of("low", "high", "humidity")) {
      String text = night.words(key);
      if (!text.isEmpty()) {
        boolean percent = key.equals("humidity");
        double value = Amount.of(text);
        problems.addAll(
            EngineRefusal.at(
                night, key, () -> new Climate.Reading(percent ? 0 : value, percent ? value : 100)));
      }
    }
  }

  /** The engine's own refusals, each as near to its figure as can be told. */
  private void figures() {
    if (!problems.isEmpty()) {
      return;
    }
    ShopFile file = new ShopFile(shop, plan);
    for (Facts night : file.saying("climate").group("climate").groups("nights")) {
      night(night);
    }
    if (!problems.isEmpty()) {
      return;
    }
    problems.addAll(EngineRefusal.at(file.saying("climate"), "climate", file::climate));
    problems.addAll(EngineRefusal.at(file.saying("hours"), "hours", file::week));
    problems.addAll(EngineRefusal.at(file.saying("clamps"), "clamps", file::clamps));
    for (Facts part : plan.groups("parts")) {
      problems.addAll(EngineRefusal.of(part, () -> PlanFile.part(part)));
    }
    if (problems.isEmpty()) {
      problems.addAll(EngineRefusal.of(shop, file::shop));
    }
    if (problems.isEmpty()) {
      problems.addAll(EngineRefusal.of(plan, new PlanFile(plan, shop, library)::request));
    }
  }
}
