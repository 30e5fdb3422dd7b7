package benchlore.generator.planning;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.yaml.snakeyaml.Yaml;

/**
 * A made-up project with what a master expects of its plan.
 *
 * @param id its name, unique
 * @param what it is, in a line
 * @param waitsFor a word the plan file can't read yet, if it is written with one
 * @param plan the plan file's own words, all of them
 * @param expect what a master expects
 */
record JudgedProject(
    String id,
    String what,
    Optional<String> waitsFor,
    Map<String, Object> plan,
    List<Check> expect) {
  private static final Path FOLDER =
      Path.of("src", "test", "resources", "benchlore", "generator", "planning");

  /**
   * One thing a master expects.
   *
   * @param rule which of the closed vocabulary, as the file calls it
   * @param value what the rule is held against
   * @param why a sentence
   * @param from where the expectation comes from
   * @param open why the plan can't keep it yet; if present it must still fail
   * @param brokenBy how many plans still break a check that is held against all
   */
  record Check(
      String rule, Object value, String why, String from, Optional<String> open, int brokenBy) {
    /** The rule and its value, as written. */
    String words() {
      return rule + " " + value;
    }
  }

  static List<JudgedProject> read() {
    Map<?, ?> words = (Map<?, ?>) yaml("judged-words");
    List<JudgedProject> projects = new ArrayList<>();
    for (String file :
        List.of(
            "judged-furniture",
            "judged-colours",
            "judged-outside",
            "judged-glue",
            "judged-later")) {
      for (Object entry : (List<?>) yaml(file)) {
        projects.add(project((Map<?, ?>) entry, words));
      }
    }
    return projects;
  }

  /** What is expected of every plan. */
  static List<Check> everywhere() {
    return ((List<?>) yaml("judged-everywhere")).stream().map(c -> check(copy(c))).toList();
  }

  private static Object yaml(String name) {
    try {
      return new Yaml().load(Files.readString(FOLDER.resolve(name + ".yaml")));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static JudgedProject project(Map<?, ?> entry, Map<?, ?> words) {
    Map<String, Object> plan = new LinkedHashMap<>();
    plan.put("id", entry.get("id"));
    plan.put("title", entry.get("what"));
    plan.put("intro", entry.get("what"));
    ((Map<?, ?>) words.get("base")).forEach((key, value) -> plan.put((String) key, value));
    ((Map<?, ?>) entry.get("plan")).forEach((key, value) -> plan.put((String) key, value));
    plan.replaceAll((key, value) -> spelled(key, value, words));
    return new JudgedProject(
        (String) entry.get("id"),
        (String) entry.get("what"),
        Optional.ofNullable((String) entry.get("waits-for")),
        plan,
        ((List<?>) entry.get("expect")).stream().map(c -> check(copy(c))).toList());
  }

  /** The value with every "@word" put in full. */
  private static Object spelled(String key, Object value, Map<?, ?> words) {
    if (value instanceof String word && word.startsWith("@")) {
      Object full = ((Map<?, ?>) words.get(key)).get(word.substring(1));
      return spelled(key, java.util.Objects.requireNonNull(full, key + " " + word), words);
    }
    if (value instanceof List<?> list) {
      return list.stream().map(one -> spelled(key, one, words)).toList();
    }
    if (value instanceof Map<?, ?> map) {
      Map<String, Object> full = copy(map);
      full.replaceAll((inner, one) -> spelled(inner, one, words));
      return full;
    }
    return value;
  }

  private static Check check(Map<String, Object> entry) {
    String why = (String) entry.remove("why");
    String from = (String) entry.remove("from");
    Optional<String> open = Optional.ofNullable((String) entry.remove("open"));
    int brokenBy = (int) Optional.ofNullable(entry.remove("broken-by")).orElse(0);
    if (entry.size() != 1 || why == null || from == null) {
      throw new IllegalArgumentException("a check is one rule with why and from: " + entry);
    }
    Map.Entry<String, Object> rule = entry.entrySet().iterator().next();
    return new Check(rule.getKey(), rule.getValue(), why, from, open, brokenBy);
  }

  private static Map<String, Object> copy(Object map) {
    Map<String, Object> copy = new LinkedHashMap<>();
    ((Map<?, ?>) map).forEach((key, value) -> copy.put((String) key, value));
    return copy;
  }
}
