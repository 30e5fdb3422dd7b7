package benchlore.schedules.exchange;

import benchlore.schedules.answer.Message;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.compatibility.OverReason;
import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.compatibility.Verdict;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.Species;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Materials;
import benchlore.schedules.project.Pairing;
import benchlore.schedules.project.Suits;

/** What a project is made of, and what the tables say of it. */
final class MaterialsJson {
  private MaterialsJson() {}

  static Materials materials(RequestReader f) {
    return new Materials(
        Species.table().read(f.group("wood")),
        Adhesive.table().read(f.group("adhesive")),
        f.list("layers", MaterialsJson::layer),
        suits(f.group("suits")));
  }

  /** A finish without {@code coats} goes on as its record has it. */
  private static Layer layer(RequestReader f) {
    Layer usual =
        Layer.usual(
            f.text("title"),
            Finish.table().read(f.group("finish")),
            f.list("solvents", AirJson::share));
    return f.optional("coats", MaterialsJson::coats).map(usual::with).orElse(usual);
  }

  private static CoatChoice coats(RequestReader f) {
    return new CoatChoice(
        f.whole("coats"),
        f.number("wetFilmMicron"),
        f.word("method", ApplicationMethod.values()),
        f.word("sheen", Sheen.values()));
  }

  static Suits suits(RequestReader f) {
    return new Suits(
        f.list("glue", MaterialsJson::pairing),
        f.list("finishes", MaterialsJson::pairing),
        f.list("over", MaterialsJson::row),
        f.list(
            "barriers",
            b -> new Suits.Barrier(b.word("family", FinishFamily.values()), b.text("title"))));
  }

  private static Pairing pairing(RequestReader f) {
    return new Pairing(
        f.word("subject", Pairing.Subject.values()),
        f.text("pair"),
        f.word("verdict", Verdict.values()),
        f.list("why", MaterialsJson::message),
        f.texts("instead"));
  }

  private static Message message(RequestReader f) {
    return new Message(f.text("pattern"), f.list("quantities", ShownJson::quantity));
  }

  private static OverRow row(RequestReader f) {
    RequestReader reason = f.group("reason");
    return new OverRow(
        f.words("upper", FinishFamily.values()),
        f.words("under", FinishFamily.values()),
        new OverReason(
            reason.word("holds", OverReason.Holds.values()),
            reason.word("waitUntil", Stage.values()),
            reason.optionalWord("barrier", FinishFamily.values()),
            reason.text("why"),
            reason.provenance("from")));
  }
}
