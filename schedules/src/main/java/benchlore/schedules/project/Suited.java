package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.compatibility.Verdict;
import java.util.ArrayList;
import java.util.List;

/**
 * What the tables make of a project: what they say no to is refused, what they say to mind is told
 * at the step where it matters, in the rows' own words.
 *
 * <p>A finish that another lasting one goes over is kept by that one from water, sun and hands, so
 * the place refuses only the last such finish and what stands on it; the others are told of.
 */
final class Suited {
  private Suited() {}

  static List<Refusal> refusals(ProjectRequest request) {
    Materials materials = request.materials();
    List<Refusal> refusals = new ArrayList<>();
    if (glued(request)) {
      for (Pairing pairing : materials.suits().glue()) {
        refuse(pairing, refusals);
      }
    }
    List<Pairing> finishes = materials.suits().finishes();
    for (int i = materials.faceIndex(); i < finishes.size(); i++) {
      refuse(finishes.get(i), refusals);
    }
    refusals.addAll(new LayerOver(materials.suits()).refusals(materials.layers()));
    return refusals;
  }

  private static void refuse(Pairing pairing, List<Refusal> refusals) {
    if (pairing.verdict() != Verdict.NO) {
      return;
    }
    Message why = pairing.why().get(0);
    Message problem = new Message(pairing.pair() + ": " + why.pattern(), why.quantities());
    String kind =
        switch (pairing.subject()) {
          case FINISH_AT_PLACE -> "finish";
          case ADHESIVE_IN_USE, ADHESIVE_ON_WOOD -> "adhesive";
        };
    String remedy =
        pairing.instead().isEmpty()
            ? "Choose another " + kind + "."
            : "These would do: " + listed(pairing.instead()) + ".";
    refusals.add(new Refusal(kind, problem, Message.of(remedy)));
  }

  private static String listed(List<String> titles) {
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < titles.size(); i++) {
      words.append(i == 0 ? "" : i == titles.size() - 1 ? " or " : ", ").append(titles.get(i));
    }
    return words.toString();
  }

  private static boolean glued(ProjectRequest request) {
    for (Part part : request.parts()) {
      if (part.boards() > 1) {
        return true;
      }
    }
    return false;
  }

  /** What to mind of the adhesive, for the first glue-up. */
  static List<Message> glueNotes(ProjectRequest request) {
    List<Message> notes = new ArrayList<>();
    for (Pairing pairing : request.materials().suits().glue()) {
      notes.addAll(notes(pairing));
    }
    return notes;
  }

  /** What to mind of a finish in its place, for its first coat. */
  static List<Message> notes(ProjectRequest request, int layer) {
    List<Pairing> finishes = request.materials().suits().finishes();
    boolean below = layer < request.materials().faceIndex();
    boolean told =
        layer < finishes.size() && (!below || finishes.get(layer).verdict() == Verdict.NO);
    return told ? notes(finishes.get(layer)) : List.of();
  }

  private static List<Message> notes(Pairing pairing) {
    List<Message> notes = new ArrayList<>();
    if (pairing.verdict() == Verdict.GOOD) {
      return notes;
    }
    for (Message why : pairing.why()) {
      String before = notes.isEmpty() ? pairing.pair() + ": " : "";
      notes.add(new Message(before + why.pattern(), why.quantities()));
    }
    return notes;
  }
}
