package benchlore.schedules.projectfile;

import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.project.Moves;
import benchlore.schedules.projectfile.Rule.Field;
import benchlore.schedules.sanding.SandingTool;
import benchlore.schedules.sanding.SawnBy;
import benchlore.schedules.time.Weekday;
import java.util.ArrayList;
import java.util.List;

/** What a plan file may hold: the same as {@code plans.schema.json} says, which a test holds. */
final class PlanForm {
  private static final int ANY = 10_000;
  private static final int MOST_FINISHES = 6;
  private static final Rule ID =
      new Rule.Text(
          "an id in small letters, digits and hyphens, such as yellow-pva", TextForms::isId);
  private static final Rule STEP =
      new Rule.Text("the name of a step such as coat-2", step -> StepId.parse(step).isPresent());
  private static final Rule TITLE = new Rule.Text("", text -> text.length() >= 2);
  private static final Rule LENGTH = amount("a length such as 900 mm", "mm", "m", "in");
  private static final Rule FORCE = amount("a force such as 4000 N", "N", "lbf");
  private static final Rule FILM = amount("a film such as 90 µm", "µm", "mil");
  private static final Rule TIME =
      amount("hands-on time to machine one part, such as 1.5 h", "min", "h", "d");
  private static final Rule GRADE = new Rule.Text("a grade such as P80", TextForms::isGrade);
  private static final Rule FLAG = new Rule.Flag();

  private PlanForm() {}

  private static Rule amount(String description, String... units) {
    List<String> words = List.of(units);
    return new Rule.Text(description, text -> TextForms.isAmount(text, words, false));
  }

  private static Rule percent(String description) {
    return amount(description, "%");
  }

  private static Rule temperature(String more) {
    return new Rule.Text(
        "a temperature such as 15 °C" + more,
        text -> TextForms.isAmount(text, List.of("°C"), true));
  }

  private static Rule whole(int least, int most) {
    return new Rule.Figure(true, least, most);
  }

  private static Rule.Word words(Enum<?>... values) {
    List<String> words = new ArrayList<>();
    for (Enum<?> value : values) {
      words.add(FileGroup.word(value));
    }
    return new Rule.Word(words);
  }

  private static Rule list(Rule item, int least) {
    return new Rule.Items(item, least, ANY);
  }

  /** The whole file. */
  static Rule.Group whole() {
    return Rule.Group.of(
        Field.of("id", ID),
        Field.of("title", TITLE),
        Field.of("intro", TITLE),
        Field.of(
            "start",
            new Rule.Text("the first moment, such as 2027-04-02 18:00", TextForms::isMinute)),
        Field.of("species", ID),
        Field.of("adhesive", ID),
        Field.perhaps("adhesive-minimum", temperature(", the least on the adhesive's label")),
        Field.perhaps("finish", finish()),
        Field.perhaps("finishes", new Rule.Items(finish(), 1, MOST_FINISHES)),
        Field.of("place", words(PlaceClimate.values())),
        Field.of("boards", boards()),
        Field.perhaps("climate", climate()),
        Field.perhaps("hours", hours()),
        Field.perhaps("days-off", list(day("a day such as 2027-04-04"), 0)),
        Field.perhaps("volume", amount("a volume such as 60 m3", "m3")),
        Field.perhaps("air-changes", new Rule.Figure(false, 0.01, 600)),
        Field.perhaps("mixing-factor", new Rule.Figure(false, 1, 10)),
        Field.perhaps("ignition", list(words(IgnitionSource.values()), 0)),
        Field.perhaps("grades", list(GRADE, 1)),
        Field.perhaps("sanders", list(words(SandingTool.values()), 1)),
        Field.perhaps("clamps", clamps()),
        Field.perhaps("people", whole(1, 8)),
        Field.perhaps(
            "transfer",
            percent("the share of what you spray that lands on the work, such as 60 %")),
        Field.perhaps(
            "glue-settles",
            amount("how long glued joints settle before they are planed, such as 3 d", "h", "d")),
        Field.perhaps("run", run()),
        Field.of("parts", list(part(), 1)));
  }

  private static Rule day(String description) {
    return new Rule.Text(description, TextForms::isDay);
  }

  private static Rule finish() {
    return Rule.Group.of(
        Field.of("record", ID),
        Field.perhaps("sheen", words(Sheen.values())),
        Field.perhaps("coats", whole(1, 50)),
        Field.perhaps("method", words(ApplicationMethod.values())),
        Field.perhaps("wet-film", FILM));
  }

  private static Rule boards() {
    return Rule.Group.of(
        Field.of("settled", FLAG), Field.of("moisture", percent("a percentage such as 55 %")));
  }

  private static Rule climate() {
    Rule heating =
        Rule.Group.of(
            Field.of("from", hour("hour of the day such as 9 h", 23)),
            Field.of("to", hour("hour of the day such as 22 h", 24)),
            Field.of("at", temperature("")));
    return Rule.Group.of(
        Field.of("low", temperature("")),
        Field.of("high", temperature("")),
        Field.of("humidity", percent("relative humidity in the afternoon, such as 55 %")),
        Field.perhaps("heating", heating),
        Field.perhaps("nights", new Rule.Items(night(), 0, 60)));
  }

  private static Rule hour(String description, int most) {
    return new Rule.Text(description, text -> TextForms.isHour(text, most));
  }

  private static Rule night() {
    return Rule.Group.of(
        Field.of("date", day("the day the night begins on, such as 2027-04-04")),
        Field.of("low", temperature(", the coldest of the night")),
        Field.of("high", temperature(", the warmest of the afternoon before")),
        Field.perhaps(
            "humidity",
            percent(
                "relative humidity of the afternoon before, such as 55 %; as much water as usual"
                    + " if nothing is said")),
        Field.perhaps("heated", FLAG));
  }

  private static Rule hours() {
    Rule spans = list(new Rule.Text("hours such as 18:30-21:30", TextForms::isSpan), 0);
    List<Field> days = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      days.add(Field.perhaps(FileGroup.word(day), spans));
    }
    return new Rule.Group(days, false);
  }

  private static Rule clamps() {
    return Rule.Group.of(
        Field.of("count", whole(0, 500)),
        Field.of("force", FORCE),
        Field.of("caul", LENGTH),
        Field.of("jaw", LENGTH));
  }

  private static Rule run() {
    String when = "from when to when, such as 2027-04-02 18:00:00 to 2027-04-02 18:45:00";
    Rule done =
        Rule.Group.of(
            Field.of("step", STEP),
            Field.of("at", list(new Rule.Text(when, TextForms::isSlot), 1)));
    String saved =
        "when this was saved, such as 2027-04-03 10:30; what is not done is laid out from then on";
    return Rule.Group.of(
        Field.of("saved", new Rule.Text(saved, TextForms::isMinute)),
        Field.of("done", new Rule.Items(done, 0, 500)));
  }

  private static Rule part() {
    return Rule.Group.of(
        Field.of("name", new Rule.Text("a name in letters and digits", TextForms::isName)),
        Field.of("count", whole(1, 100)),
        Field.of("length", LENGTH),
        Field.of("width", LENGTH),
        Field.of("thickness", LENGTH),
        Field.perhaps("grain", new Rule.Word(List.of("flat", "rift", "quarter"))),
        Field.of("boards", whole(1, 20)),
        Field.of("surface", surface()),
        Field.of("machining", TIME),
        Field.of("moves", new Rule.WordOrFlag(words(Moves.values()))));
  }

  private static Rule surface() {
    return Rule.Group.oneOf(
        Field.perhaps("ball-nose", two("diameter", "stepover")),
        Field.perhaps("planed", two("pitch", "radius")),
        Field.perhaps("straight-cut", two("diameter", "chip-load")),
        Field.perhaps("sawn", words(SawnBy.values())),
        Field.perhaps("sanded", GRADE));
  }

  private static Rule two(String one, String other) {
    return Rule.Group.of(Field.of(one, LENGTH), Field.of(other, LENGTH));
  }
}
