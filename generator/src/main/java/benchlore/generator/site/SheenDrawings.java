package benchlore.generator.site;

import benchlore.generator.drawing.Drawings;
import benchlore.generator.drawing.SheenSwatch;
import benchlore.generator.library.Entry;
import benchlore.generator.units.Display;
import benchlore.schedules.answer.Datum;

/** The window mirrored in a film, from a sheen's record. */
final class SheenDrawings {
  private SheenDrawings() {}

  /** The drawing of a record's page. */
  static BitDrawings.Figure of(Entry sheen) {
    return new BitDrawings.Figure(
        Drawings.sheen(swatch(sheen), title(sheen), "sheen"),
        "A window mirrored in it, blurred as its middle reading says; "
            + Display.text(sheen.facts().datum("gloss-60")));
  }

  /** The drawing beside others on one page. */
  static String patch(Entry sheen) {
    return Drawings.sheenPatch(swatch(sheen), title(sheen), "sheen-" + sheen.id());
  }

  private static String title(Entry sheen) {
    return sheen.title() + ": a window in the film";
  }

  private static SheenSwatch swatch(Entry sheen) {
    Datum gloss = sheen.facts().datum("gloss-60");
    boolean rubbed = sheen.facts().words("look").equals("rubbed");
    return new SheenSwatch(gloss.low(), gloss.high(), rubbed);
  }
}
