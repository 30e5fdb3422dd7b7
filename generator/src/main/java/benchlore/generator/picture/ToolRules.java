package benchlore.generator.picture;

import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Problem;
import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What must hold for the picture of a tool besides: it is true to the size its record tells. */
final class ToolRules {
  /** How far the picture may miss the size told, as a share of it. */
  private static final double SLACK = 0.03;

  private static final double ROUNDING = 0.011;
  private static final int MOST_CALLOUTS = 4;
  private static final int LONGEST = 54;

  private static final Map<String, Set<String>> WORDS =
      Map.of(
          "data-small", Set.of("yes", "no", "only"),
          "data-aside", Set.of("true"),
          "data-level", Set.of("true"),
          "data-side", Set.of("above", "below"));

  private final Element root;
  private final List<Problem> problems;

  private ToolRules(Element root) {
    this.root = root;
    this.problems = new ArrayList<>(PictureRules.problems(root));
  }

  /** Everything wrong with a file's elements, each at its place. */
  static List<Problem> problems(Element root, Optional<LibraryRecord> tool) {
    ToolRules rules = new ToolRules(root);
    rules.marks(root);
    tool.ifPresent(rules::title);
    rules.callouts();
    if (rules.problems.isEmpty()) {
      rules.frame();
      tool.ifPresent(rules::size);
    }
    return rules.problems;
  }

  private void marks(Element element) {
    WORDS.forEach(
        (name, accepted) -> {
          String word = element.value(name);
          if (!word.isEmpty() && !accepted.contains(word)) {
            String list = String.join(", ", accepted.stream().sorted().toList());
            problems.add(
                element.problem(
                    name, "`" + word + "` is not accepted here", "Accepted: " + list + "."));
          }
        });
    if (element.name().equals("clipPath")) {
      problems.add(
          element.problem("the picture of a tool clips nothing", "Draw what is to be seen."));
    }
    if (element.value("display").equals("none") && !element.value("data-small").equals("only")) {
      problems.add(
          element.problem(
              "display", "this is hidden", "Delete it, or write `data-small=\"only\"`."));
    }
    element.children().forEach(this::marks);
  }

  private void title(LibraryRecord tool) {
    for (Element title : root.children("title")) {
      if (!title.text().startsWith(tool.title() + ", ")) {
        problems.add(
            title.problem(
                "the title is not the tool's",
                "Write `" + tool.title() + ", from the side`, or from where it is seen instead."));
      }
    }
  }

  private void callouts() {
    List<Element> texts = new ArrayList<>();
    collect(root, texts);
    if (texts.isEmpty() || texts.size() > MOST_CALLOUTS) {
      problems.add(
          root.problem(
              texts.size() + " callouts",
              "Write one to four `<text>`, each at the place it speaks of: what tells this tool."));
    }
    for (Element text : texts) {
      int length = Callout.words(text).length();
      if (length < 3 || length > LONGEST) {
        problems.add(
            text.problem(
                "this callout is too " + (length < 3 ? "short" : "long"),
                "Write 3 to " + LONGEST + " letters."));
      }
    }
  }

  private static void collect(Element element, List<Element> texts) {
    if (element.name().equals("text")) {
      texts.add(element);
    }
    element.children().forEach(child -> collect(child, texts));
  }

  /** One unit is a millimetre, and all is in the frame. */
  private void frame() {
    Box frame = Frames.of(root).orElseThrow();
    unit("width", frame.wide());
    unit("height", frame.high());
    ToolPicture picture = ToolPicture.of(root);
    double slack = Math.max(ROUNDING, SLACK * Math.max(frame.wide(), frame.high()));
    for (Mark mark : picture.marks()) {
      mark(mark, frame, slack);
    }
    Box drawn = picture.all().orElse(frame);
    List<Element> texts = new ArrayList<>();
    collect(root, texts);
    List<Callout> callouts = Callout.of(root);
    for (int i = 0; i < texts.size(); i++) {
      Point at = callouts.get(i).at();
      if (!holds(drawn, new Box(at.x(), at.z(), at.x(), at.z()), slack)) {
        problems.add(
            texts
                .get(i)
                .problem("this callout points past the tool", "Put it on what it speaks of."));
      }
    }
  }

  private void unit(String side, double mm) {
    if (!near(root.value(side), mm)) {
      problems.add(
          root.problem(
              side,
              "a unit of this picture is no millimetre",
              "Write `" + side + "=\"" + Num.of(mm) + "mm\"`, as the viewBox is."));
    }
  }

  private void mark(Mark mark, Box frame, double slack) {
    List<Box> box = Outlines.box(mark.outline()).stream().toList();
    if (mark.moves() && box.stream().allMatch(b -> b.wide() == 0 && b.high() == 0)) {
      problems.add(mark.element().problem("this arrow has no length", "Draw its line."));
    }
    if (mark.shown() != Mark.Shown.SMALL && !box.stream().allMatch(b -> holds(frame, b, slack))) {
      problems.add(
          mark.element()
              .problem("this leaves the frame", "Draw it inside, or widen the `viewBox`."));
    }
  }

  private static boolean near(String written, double mm) {
    return written.matches("\\d+(\\.\\d+)?mm")
        && Math.abs(Double.parseDouble(written.replace("mm", "")) - mm) <= ROUNDING;
  }

  private static boolean holds(Box frame, Box box, double slack) {
    return box.x0() >= frame.x0() - slack
        && box.z0() >= frame.z0() - slack
        && box.x1() <= frame.x1() + slack
        && box.z1() <= frame.z1() + slack;
  }

  private void size(LibraryRecord tool) {
    ToolPicture picture = ToolPicture.of(root);
    double wide = picture.itself().map(Box::wide).orElse(0.0);
    double high = picture.itself().map(Box::high).orElse(0.0);
    side(tool.drawn(), "wide", wide);
    side(tool.drawn(), "high", high);
  }

  private void side(Facts size, String field, double drawn) {
    double told = size.datum(field).mid() * 1_000;
    if (Math.abs(drawn - told) > SLACK * told) {
      problems.add(
          root.problem(
              "the tool is drawn " + shown(drawn) + " mm " + field + ", not " + shown(told),
              "Correct the picture or `drawn` in its record: they may differ by 3 %."));
    }
  }

  private static String shown(double mm) {
    return Num.of(Math.round(mm * 10) / 10.0);
  }
}
