package benchlore.generator.picture;

import benchlore.generator.content.Problem;
import benchlore.generator.content.Suggestions;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What must hold for every picture kept as a file. */
final class PictureRules {
  private static final Set<String> OTHERS =
      Set.of("svg", "g", "text", "tspan", "title", "desc", "defs", "clipPath");

  /** Elements whose outline is one attribute's text. */
  private static final Map<String, String> OUTLINED =
      Map.of("path", "d", "polyline", "points", "polygon", "points");

  private static final Set<String> NUMBERS =
      Set.of("x", "y", "width", "height", "rx", "ry", "cx", "cy", "r", "x1", "y1", "x2", "y2");

  private final List<Problem> problems = new ArrayList<>();

  private PictureRules() {}

  /** Everything wrong with a file's elements, each at its place. */
  static List<Problem> problems(Element root) {
    PictureRules rules = new PictureRules();
    for (String needed : List.of("title", "desc")) {
      if (root.children(needed).stream().allMatch(words -> words.text().isEmpty())) {
        rules.problems.add(
            root.problem(
                "the picture has no `" + needed + "`",
                needed.equals("title")
                    ? "Write `<title>` with its name."
                    : "Write `<desc>` with what it shows, for someone who can't see it."));
      }
    }
    if (Frames.of(root).isEmpty()) {
      rules.problems.add(
          root.problem(
              "viewBox",
              "the picture has no frame",
              "Write `viewBox` with four numbers: left, top, width and height."));
    }
    rules.check(root, false);
    rules.clips(root);
    return rules.problems;
  }

  /** Every clip asked for is there, once. */
  private void clips(Element root) {
    List<String> ids =
        elements(root)
            .filter(element -> element.name().equals("clipPath"))
            .map(element -> element.value("id"))
            .toList();
    elements(root)
        .filter(element -> !element.value("clip-path").isEmpty())
        .forEach(
            element -> {
              String id = element.value("clip-path").replaceAll("^url\\(#(.*)\\)$", "$1");
              if (Collections.frequency(ids, id) != 1) {
                problems.add(
                    element.problem(
                        "clip-path",
                        "there is not one `clipPath` called `" + id + "`",
                        "Give it that `id`, and no other."));
              }
            });
  }

  private static Stream<Element> elements(Element element) {
    return Stream.concat(
        Stream.of(element), element.children().stream().flatMap(PictureRules::elements));
  }

  private void check(Element element, boolean clips) {
    boolean drawn = Outlines.DRAWN.contains(element.name());
    if (!drawn && !OTHERS.contains(element.name())) {
      Set<String> accepted = new TreeSet<>(Outlines.DRAWN);
      accepted.addAll(OTHERS);
      problems.add(
          element.problem(
              "`" + element.name() + "` has no place in a picture",
              "Accepted: " + String.join(", ", accepted) + "."));
      return;
    }
    new TreeMap<>(element.attributes()).forEach((name, a) -> check(element, name, a.value()));
    looks(element, (drawn && !clips) || element.name().equals("text"));
    boolean written = OUTLINED.containsKey(element.name());
    if (written && Outlines.of(element).isEmpty()) {
      problems.add(
          element.problem(
              OUTLINED.get(element.name()),
              "this outline can't be read",
              "Write plain numbers and the commands of SVG paths."));
    }
    for (Element child : element.children()) {
      check(child, clips || element.name().equals("clipPath"));
    }
  }

  private void check(Element element, String name, String value) {
    if (name.startsWith("on")) {
      problems.add(element.problem(name, "a picture runs no script", "Delete this attribute."));
    } else if (name.equals("style")) {
      problems.add(
          element.problem(name, "looks come from classes alone", "Write a `class` in its place."));
    } else if (name.equals("href") || value.replace("url(#", "").contains("url(")) {
      problems.add(element.problem(name, "a picture needs nothing beside itself", "Draw it here."));
    } else if (name.equals("transform") && Transforms.parse(value).isEmpty()) {
      problems.add(
          element.problem(
              name, "this transform can't be read", "Accepted: translate, scale, rotate, matrix."));
    } else if (NUMBERS.contains(name)
        && !element.name().equals("svg")
        && element.number(name).isEmpty()) {
      problems.add(
          element.problem(name, "`" + value + "` is no plain number", "Write it without a unit."));
    }
  }

  private void looks(Element element, boolean needed) {
    List<String> looks = element.looks();
    for (String look : looks) {
      if (look.startsWith("drw-") && !Looks.names().contains(look)) {
        problems.add(
            element.problem(
                "class", "there is no look `" + look + "`", Suggestions.todo(look, Looks.names())));
      } else if (!look.startsWith("drw-") && !look.equals("dim")) {
        problems.add(
            element.problem(
                "class", "`" + look + "` is no look of a drawing", "Write one that begins drw-."));
      }
    }
    if (needed && looks.isEmpty()) {
      problems.add(
          element.problem("this has no look", "Write `class` with what it is, such as drw-wood."));
    }
  }
}
