package benchlore.schedules.projectfile;

import java.util.List;
import java.util.function.Predicate;

/** What may stand at one place of a file. */
sealed interface Rule {
  /** A word of a closed list. */
  record Word(List<String> accepted) implements Rule {}

  /** A word of a closed list, or true or false as older files have it. */
  record WordOrFlag(Word word) implements Rule {}

  /**
   * A text.
   *
   * @param description what to write, such as "a length such as 900 mm"; empty for free text
   * @param form whether a text has the form
   */
  record Text(String description, Predicate<String> form) implements Rule {}

  /**
   * A number.
   *
   * @param isWhole whether it has no places
   * @param least inclusive
   * @param most inclusive
   */
  record Figure(boolean isWhole, double least, double most) implements Rule {}

  /** True or false. */
  record Flag() implements Rule {}

  /**
   * A list.
   *
   * @param item what each item is
   * @param least items, inclusive
   * @param most items, inclusive
   */
  record Items(Rule item, int least, int most) implements Rule {}

  /**
   * Named fields.
   *
   * @param fields those known
   * @param isOneOf whether exactly one of them has to be there
   */
  record Group(List<Field> fields, boolean isOneOf) implements Rule {
    static Group of(Field... fields) {
      return new Group(List.of(fields), false);
    }

    static Group oneOf(Field... fields) {
      return new Group(List.of(fields), true);
    }
  }

  /**
   * A field.
   *
   * @param key its name
   * @param rule what may stand there
   * @param isRequired whether it has to be there
   */
  record Field(String key, Rule rule, boolean isRequired) {
    static Field of(String key, Rule rule) {
      return new Field(key, rule, true);
    }

    static Field perhaps(String key, Rule rule) {
      return new Field(key, rule, false);
    }
  }
}
