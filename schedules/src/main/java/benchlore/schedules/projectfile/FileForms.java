package benchlore.schedules.projectfile;

import benchlore.schedules.exchange.Node;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.time.Weekday;
import java.util.ArrayList;
import java.util.List;

/** Checks the forms of a whole plan file, every key and word at any depth, by {@link PlanForm}. */
final class FileForms {
  /** The days of the week as a file has them, Monday first. */
  static final List<String> WEEKDAYS = weekdays();

  private static final int LONGEST = 40;

  private final List<FileProblem> problems = new ArrayList<>();

  private FileForms() {}

  private static List<String> weekdays() {
    List<String> days = new ArrayList<>();
    for (Weekday day : Weekday.values()) {
      days.add(FileGroup.word(day));
    }
    return days;
  }

  static List<FileProblem> problems(Node plan) {
    FileForms check = new FileForms();
    if (plan.kind() == Node.Kind.OBJECT) {
      check.value(plan, PlanForm.whole(), List.of());
      FileChecks.finishWords(FileGroup.of(plan, FileProblem.Source.PLAN))
          .ifPresent(check.problems::add);
    } else {
      check.add(
          List.of(), "this is no plan file: it holds no names with values", "Choose another file.");
    }
    return check.problems;
  }

  private void add(List<String> path, String what, String todo) {
    problems.add(new FileProblem(FileProblem.Source.PLAN, path, what, todo));
  }

  private void bound(List<String> path, String what, String todo) {
    problems.add(new FileProblem(FileProblem.Source.PLAN, path, what, todo, true));
  }

  private void value(Node value, Rule rule, List<String> path) {
    if (rule instanceof Rule.WordOrFlag either) {
      if (value.kind() != Node.Kind.FLAG) {
        word(value, either.word(), path);
      }
    } else if (rule instanceof Rule.Word word) {
      word(value, word, path);
    } else if (value.kind() != kind(rule)) {
      String what = quoted(value) + " stands where something else belongs";
      boolean nothing = value.kind() == Node.Kind.ABSENT;
      add(path, nothing ? "nothing is written here" : what, wanted(rule));
    } else if (rule instanceof Rule.Text text) {
      text(value, text, path);
    } else if (rule instanceof Rule.Figure number) {
      number(value, number, path);
    } else if (rule instanceof Rule.Items items) {
      items(value, items, path);
    } else if (rule instanceof Rule.Group group) {
      group(value, group, path);
    }
  }

  private void word(Node value, Rule.Word rule, List<String> path) {
    String word = value.kind() == Node.Kind.TEXT ? value.text() : "";
    if (!rule.accepted().contains(word)) {
      add(path, quoted(value) + " is not accepted here", NearWords.todo(word, rule.accepted()));
    }
  }

  private void text(Node value, Rule.Text rule, List<String> path) {
    if (!rule.form().test(value.text())) {
      boolean free = rule.description().isEmpty();
      String what = free ? "this text is too short" : quoted(value) + " has the wrong form";
      add(path, what, free ? "Write it out." : wanted(rule));
    }
  }

  private void number(Node value, Rule.Figure rule, List<String> path) {
    double number = value.number();
    if (rule.isWhole() && number != Math.floor(number)) {
      add(path, quoted(value) + " stands where something else belongs", wanted(rule));
    } else if (number < rule.least()) {
      bound(path, quoted(value) + " is too small", "The least is " + number(rule.least()) + ".");
    } else if (number > rule.most()) {
      bound(path, quoted(value) + " is too large", "The most is " + number(rule.most()) + ".");
    }
  }

  private void items(Node list, Rule.Items rule, List<String> path) {
    if (list.size() < rule.least()) {
      add(path, "this list is too short", "The least is " + rule.least() + ".");
    } else if (list.size() > rule.most()) {
      add(path, "this list is too long", "The most is " + rule.most() + ".");
      return;
    }
    for (int i = 0; i < list.size(); i++) {
      value(list.item(i), rule.item(), longer(path, Integer.toString(i)));
    }
  }

  private void group(Node group, Rule.Group rule, List<String> path) {
    List<String> known = new ArrayList<>();
    rule.fields().forEach(field -> known.add(field.key()));
    List<String> keys = group.keys();
    for (String key : keys) {
      if (!known.contains(key)) {
        String where = path.isEmpty() ? "in a plan file" : "here";
        add(path, "`" + cut(key) + "` is not known " + where, NearWords.todo(key, known));
      }
    }
    if (rule.isOneOf() && keys.size() != 1) {
      String all = String.join(", ", known);
      add(path, "this takes exactly one of its fields", "Write one of: " + all + ".");
    }
    for (Rule.Field field : rule.fields()) {
      if (keys.contains(field.key())) {
        value(group.field(field.key()), field.rule(), longer(path, field.key()));
      } else if (field.isRequired()) {
        add(path, "`" + field.key() + "` is missing", wanted(field.rule()));
      }
    }
  }

  private static List<String> longer(List<String> path, String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add(key);
    return longer;
  }

  private static Node.Kind kind(Rule rule) {
    if (rule instanceof Rule.Figure) {
      return Node.Kind.NUMBER;
    }
    if (rule instanceof Rule.Flag) {
      return Node.Kind.FLAG;
    }
    if (rule instanceof Rule.Items) {
      return Node.Kind.LIST;
    }
    return rule instanceof Rule.Group ? Node.Kind.OBJECT : Node.Kind.TEXT;
  }

  private static String wanted(Rule rule) {
    if (rule instanceof Rule.WordOrFlag either) {
      return wanted(either.word());
    }
    if (rule instanceof Rule.Word word) {
      return NearWords.todo("", word.accepted());
    }
    if (rule instanceof Rule.Text text) {
      return text.description().isEmpty()
          ? "Write text; put quotes round it if it looks like a number."
          : "Write " + text.description() + ".";
    }
    if (rule instanceof Rule.Figure number) {
      return number.isWhole()
          ? "Write a whole number, without quotes."
          : "Write a number, without quotes and without a unit.";
    }
    if (rule instanceof Rule.Flag) {
      return "Write true or false.";
    }
    return rule instanceof Rule.Items
        ? "Write a list: [one, two]."
        : "Write fields: { name: value }.";
  }

  private static String number(double value) {
    return value == Math.floor(value) ? Long.toString(Numeric.toLong(value)) : Numeric.text(value);
  }

  /** A value as it stands in the file, shortened. */
  private static String quoted(Node value) {
    return switch (value.kind()) {
      case TEXT -> "`" + cut(value.text()) + "`";
      case NUMBER -> "`" + number(value.number()) + "`";
      case FLAG -> "`" + value.flag() + "`";
      case LIST -> value.size() > 0 ? "a list that begins with " + quoted(value.item(0)) : "`[]`";
      case OBJECT -> "a group of fields";
      case ABSENT -> "nothing";
    };
  }

  private static String cut(String text) {
    return text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
  }
}
