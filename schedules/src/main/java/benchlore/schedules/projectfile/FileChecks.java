package benchlore.schedules.projectfile;

import benchlore.schedules.quantity.AsciiText;
import benchlore.schedules.room.Climate;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.time.Date;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What no form can tell of a plan and its shop: days, grades and figures that are none. */
final class FileChecks {
  private final ShopReader files;
  private final List<FileProblem> problems = new ArrayList<>();

  private FileChecks(ShopReader files) {
    this.files = files;
  }

  /** Every problem of a plan and the shop it is made in. */
  static List<FileProblem> ofPlan(PlanReader plan) {
    FileChecks checks = new FileChecks(plan.shop());
    checks.plain();
    checks.records(plan);
    checks.figures();
    if (checks.problems.isEmpty()) {
      checks.refusal(plan.plan(), "", plan::read);
    }
    return checks.problems;
  }

  /** Every problem of a shop that no plan says otherwise about. */
  static List<FileProblem> ofShop(ShopReader shop) {
    FileChecks checks = new FileChecks(shop);
    checks.plain();
    if (checks.problems.isEmpty()) {
      checks.refusal(shop.shop(), "", shop::read);
    }
    return checks.problems;
  }

  private void plain() {
    days();
    hours();
    climate();
    grades();
  }

  private void add(FileProblem problem) {
    if (!problems.contains(problem)) {
      problems.add(problem);
    }
  }

  private void add(FileGroup group, FileGroup.Text text, String what, String todo) {
    add(new FileProblem(group.file(), text.path(), what, todo));
  }

  private void days() {
    FileGroup plan = files.plan();
    if (plan.has("start")) {
      FileGroup.Text start = new FileGroup.Text(plan.text("start"), plan.at("start"));
      day(plan, start, () -> PlanReader.start(plan));
    }
    for (FileGroup file : List.of(plan, files.shop())) {
      for (FileGroup.Text day : file.texts("days-off")) {
        day(file, day, () -> Date.parse(day.text()));
      }
    }
  }

  private void day(FileGroup group, FileGroup.Text day, Runnable reading) {
    try {
      reading.run();
    } catch (IllegalArgumentException e) {
      add(group, day, "`" + day.text() + "` is no day", "Write a day that is in the calendar.");
    }
  }

  private void hours() {
    FileGroup hours = files.saying("hours").group("hours");
    for (String weekday : FileForms.WEEKDAYS) {
      for (FileGroup.Text span : hours.texts(weekday)) {
        int dash = span.text().indexOf('-');
        if (span.text().substring(0, dash).compareTo(span.text().substring(dash + 1)) >= 0) {
          add(
              hours,
              span,
              "the hours `" + span.text() + "` run backward",
              "Write the earlier end first; split hours that pass midnight.");
        }
      }
    }
  }

  private void climate() {
    FileGroup climate = files.climateGroup();
    lowAndHigh(climate, "low of the day");
    List<String> dates = new ArrayList<>();
    for (FileGroup night : climate.groups("nights")) {
      String date = night.text("date");
      day(night, new FileGroup.Text(date, night.at("date")), () -> Date.parse(date));
      lowAndHigh(night, "low of this night");
      if (dates.contains(date)) {
        String twice = "the night of `" + date + "` stands here twice";
        add(night.problem("date", twice, "Leave one of them."));
      }
      dates.add(date);
    }
  }

  private void lowAndHigh(FileGroup f, String what) {
    if (f.amount("low") > f.amount("high")) {
      String above = "the " + what + ", `" + f.text("low") + "`, is above its high";
      add(f.problem("low", above, "Write the colder reading here."));
    }
  }

  private void grades() {
    for (FileGroup file : List.of(files.plan(), files.shop())) {
      for (FileGroup.Text label : file.texts("grades")) {
        grade(file, label);
      }
    }
    for (FileGroup part : files.plan().groups("parts")) {
      FileGroup surface = part.group("surface");
      if (surface.has("sanded")) {
        grade(part, new FileGroup.Text(surface.text("sanded"), surface.at("sanded")));
      }
    }
  }

  private void grade(FileGroup group, FileGroup.Text label) {
    List<Grit> grits = Grits.all(GritSystem.FEPA_P);
    for (Grit grit : grits) {
      if (grit.label().equals(label.text())) {
        return;
      }
    }
    double number = AsciiText.whole(label.text().substring(1, Math.min(label.text().length(), 10)));
    List<Grit> near = new ArrayList<>(grits);
    near.sort(
        (one, two) ->
            Double.compare(Math.abs(one.number() - number), Math.abs(two.number() - number)));
    add(
        group,
        label,
        "`" + label.text() + "` is no FEPA P grade",
        "The nearest are " + near.get(0).label() + " and " + near.get(1).label() + ".");
  }

  private void records(PlanReader plan) {
    FileGroup file = plan.plan();
    record(file, "species", plan.records().species(file.text("species")).isPresent());
    record(file, "adhesive", plan.records().adhesive(file.text("adhesive")).isPresent());
    finishWords(file).ifPresent(this::add);
    for (FileGroup finish : PlanReader.finishes(file)) {
      String id = finish.text("record");
      if (plan.records().finish(id).isEmpty()) {
        add(
            finish.problem(
                "record",
                "`" + id + "` carries no drying figures, so no coats can be planned",
                "Name a finish that goes on in coats, or give this one its figures."));
      }
    }
  }

  /** A plan has either one finish or a list of them. */
  static Optional<FileProblem> finishWords(FileGroup plan) {
    boolean one = plan.has("finish");
    if (one != plan.has("finishes")) {
      return Optional.empty();
    }
    String what = one ? "both `finish` and `finishes` stand here" : "`finish` is missing";
    String todo =
        "Write one of them: `finish` for one, `finishes` for a list, the first on the wood first.";
    return Optional.of(new FileProblem(plan.file(), plan.path(), what, todo));
  }

  private void record(FileGroup file, String key, boolean isKnown) {
    if (!isKnown) {
      String none = "there is no record `" + file.text(key) + "` of this kind";
      add(file.problem(key, none, "Name one that there is."));
    }
  }

  /** The engine's own refusals, each as near to its figure as can be told. */
  private void figures() {
    if (problems.isEmpty()) {
      files.climateGroup().groups("nights").forEach(this::night);
    }
    if (!problems.isEmpty()) {
      return;
    }
    refusal(files.saying("climate"), "climate", files::climate);
    refusal(files.saying("hours"), "hours", files::week);
    refusal(files.saying("clamps"), "clamps", files::clamps);
    for (FileGroup part : files.plan().groups("parts")) {
      refusal(part, "", () -> PlanReader.part(part));
    }
    if (problems.isEmpty()) {
      refusal(files.shop(), "", files::read);
    }
  }

  private void night(FileGroup night) {
    for (String key : List.of("low", "high", "humidity")) {
      if (night.has(key)) {
        double value = night.amount(key);
        boolean percent = key.equals("humidity");
        refusal(night, key, () -> new Climate.Reading(percent ? 0 : value, percent ? value : 100));
      }
    }
  }

  /** Has the engine read something; tells of its refusal at the field it names, if it does. */
  private void refusal(FileGroup group, String key, Runnable reading) {
    try {
      reading.run();
    } catch (IllegalArgumentException e) {
      String message = String.valueOf(e.getMessage());
      int space = message.indexOf(' ');
      String named = space < 0 ? "" : field(message.substring(0, space));
      boolean isField = !named.isEmpty() && group.has(named);
      String text = isField ? "`" + named + "`" + message.substring(space) : message;
      String refused = "the engine refuses this: " + text;
      add(group.problem(isField ? named : key, refused, "Correct it."));
    }
  }

  /** An engine's name as a file's field: {@code specificGravity} is {@code specific-gravity}. */
  private static String field(String component) {
    StringBuilder field = new StringBuilder();
    for (int i = 0; i < component.length(); i++) {
      char c = component.charAt(i);
      field.append(AsciiText.isUpper(c) && i > 0 ? "-" : "").append(c);
    }
    return AsciiText.lower(field.toString());
  }
}
