package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Problem;
import benchlore.generator.drawing.Silhouette;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What keeps a drawing that fits its schema from being right. */
final class SilhouetteChecks {
  /** How far the parts may miss the size written, as a share of it. */
  private static final double SLACK = 0.03;

  private static final Set<String> OPEN = Set.of("line", "curve", "arc", "hatch");
  private static final Set<String> OF_METAL = Set.of("teeth", "thread", "dots");

  private SilhouetteChecks() {}

  /** Every problem, at its field. */
  static List<Problem> problems(Facts file) {
    List<Problem> problems = new ArrayList<>();
    file.groups("parts").forEach(part -> part(part, problems));
    file.groups("moves").forEach(move -> sweep(move.group("turn"), false, problems));
    if (!problems.isEmpty()) {
      return problems;
    }
    Silhouette tool = SilhouetteData.of(file);
    side(file, "wide", tool.wide(), tool.drawnWide(), problems);
    side(file, "high", tool.high(), tool.drawnHigh(), problems);
    for (Facts callout : file.groups("callouts")) {
      if (!tool.covers(SilhouetteData.point(callout, "at"))) {
        problems.add(
            callout
                .spot("at")
                .problem(
                    "this callout points past the tool", "Write a place on one of the parts."));
      }
    }
    return problems;
  }

  private static void part(Facts part, List<Problem> problems) {
    String form = SilhouetteData.form(part);
    String material = part.words("material");
    boolean line = material.equals("line") || material.equals("edge");
    if (OPEN.contains(form) && !line) {
      problems.add(
          part.spot("material")
              .problem(
                  "an open " + form + " has no inside to be " + material,
                  "Write `line` or `edge`, or draw a bar or an outline."));
    } else if (OF_METAL.contains(form) && line) {
      problems.add(
          part.spot("material")
              .problem(
                  "`" + form + "` is more than a line",
                  "Write what it is made of, such as blade."));
    }
    if (form.equals("ring")) {
      ring(part.group("ring"), problems);
    }
    if (form.equals("arc")) {
      sweep(part.group("arc"), false, problems);
    }
    for (Facts hole : part.groups("holes")) {
      if (hole.find("ring").isPresent()) {
        ring(hole.group("ring"), problems);
      }
    }
  }

  private static void ring(Facts ring, List<Problem> problems) {
    if (number(ring, "inner") >= number(ring, "outer")) {
      problems.add(
          ring.spot("inner").problem("the ring is turned inside out", "Make inner the smaller."));
    }
    sweep(ring, true, problems);
  }

  private static void sweep(Facts of, boolean upward, List<Problem> problems) {
    if (of.find("start").isEmpty() || of.find("end").isEmpty()) {
      return;
    }
    double turn = number(of, "end") - number(of, "start");
    if (turn == 0 || Math.abs(turn) > 360 || (upward && turn < 0)) {
      problems.add(
          of.spot("end")
              .problem(
                  "from start to end it turns by " + shown(turn) + " degrees",
                  "Turn by " + (upward ? "" : "-360 or ") + "more than 0 and at most 360."));
    }
  }

  private static void side(
      Facts file, String field, double written, double drawn, List<Problem> problems) {
    if (Math.abs(drawn - written) > SLACK * written) {
      problems.add(
          file.group("size")
              .spot(field)
              .problem(
                  "the parts are " + shown(drawn) + " mm " + field + ", the size is not",
                  "Correct the parts or the size: they may differ by 3 %."));
    }
  }

  private static double number(Facts facts, String key) {
    return Double.parseDouble(facts.words(key));
  }

  private static String shown(double value) {
    return String.format(Locale.ROOT, "%.1f", value).replaceAll("\\.0$", "");
  }
}
