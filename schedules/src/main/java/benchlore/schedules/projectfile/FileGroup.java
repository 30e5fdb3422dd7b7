package benchlore.schedules.projectfile;

import benchlore.schedules.exchange.Node;
import benchlore.schedules.present.Amount;
import benchlore.schedules.quantity.AsciiText;
import benchlore.schedules.quantity.Numeric;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fields of one group of a file. The forms of a file are checked before ({@link FileForms}, or
 * the schema it agrees with), so a field that is not as it has to be is an {@link
 * IllegalArgumentException}.
 *
 * @param node the group
 * @param file which file it stands in
 * @param path the keys that lead to it
 */
record FileGroup(Node node, FileProblem.Source file, List<String> path) {
  /** A text with its place. */
  record Text(String text, List<String> path) {}

  static FileGroup of(Node node, FileProblem.Source file) {
    return new FileGroup(node, file, List.of());
  }

  boolean has(String key) {
    return node.field(key).kind() != Node.Kind.ABSENT;
  }

  FileProblem problem(String key, String what, String todo) {
    return new FileProblem(file, has(key) ? at(key) : path, what, todo);
  }

  List<String> at(String key) {
    return longer(path, key);
  }

  private static List<String> longer(List<String> path, String key) {
    List<String> longer = new ArrayList<>(path);
    longer.add(key);
    return longer;
  }

  /** A text; empty where there is none. */
  String text(String key) {
    Node field = node.field(key);
    return field.kind() == Node.Kind.TEXT ? field.text().trim() : "";
  }

  /** A number; YAML facts keep it as it was written. */
  double number(String key) {
    Node field = node.field(key);
    return field.kind() == Node.Kind.NUMBER
        ? field.number()
        : Amount.number(text(key)).orElseThrow(() -> wrong(key, "a number"));
  }

  int whole(String key) {
    return Numeric.round(number(key));
  }

  /** Yes or no; no where it is absent. */
  boolean flag(String key) {
    Node field = node.field(key);
    return field.kind() == Node.Kind.FLAG && field.flag();
  }

  /** An amount such as {@code 900 mm}, in the engine's unit. */
  double amount(String key) {
    Optional<Amount> amount = Amount.find(text(key));
    return amount.orElseThrow(() -> wrong(key, "an amount such as 900 mm")).value();
  }

  /** A word of a closed list: {@code semi-gloss} is {@code SEMI_GLOSS}. */
  <E extends Enum<E>> E word(String key, E[] values) {
    return word(new Text(text(key), at(key)), values);
  }

  private static <E extends Enum<E>> E word(Text word, E[] values) {
    for (E value : values) {
      if (word(value).equals(word.text())) {
        return value;
      }
    }
    throw new IllegalArgumentException(String.join(".", word.path()) + " is no word known here");
  }

  /** How a constant is written in a file. */
  static String word(Enum<?> value) {
    return AsciiText.lower(value.name()).replace('_', '-');
  }

  <E extends Enum<E>> List<E> words(String key, E[] values) {
    List<E> words = new ArrayList<>();
    for (Text text : texts(key)) {
      words.add(word(text, values));
    }
    return words;
  }

  /** A list of texts; empty where there is none. */
  List<Text> texts(String key) {
    List<Text> texts = new ArrayList<>();
    Node list = node.field(key);
    for (int i = 0; list.kind() == Node.Kind.LIST && i < list.size(); i++) {
      texts.add(new Text(list.item(i).text().trim(), longer(at(key), Integer.toString(i))));
    }
    return texts;
  }

  /** A nested group. */
  FileGroup group(String key) {
    return new FileGroup(node.field(key), file, at(key));
  }

  /** A list of groups; empty where there is none. */
  List<FileGroup> groups(String key) {
    List<FileGroup> groups = new ArrayList<>();
    Node list = node.field(key);
    for (int i = 0; list.kind() == Node.Kind.LIST && i < list.size(); i++) {
      groups.add(new FileGroup(list.item(i), file, longer(at(key), Integer.toString(i))));
    }
    return groups;
  }

  private IllegalArgumentException wrong(String key, String wanted) {
    return new IllegalArgumentException(String.join(".", at(key)) + " must be " + wanted);
  }
}
