package benchlore.generator.site;

import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.surface.SheenSwatch;
import benchlore.generator.drawing.surface.Surfaces;
import benchlore.generator.page.CaptionedDrawing;
import benchlore.generator.units.Display;
import benchlore.schedules.quantity.SourcedRange;

/** The window mirrored in a film, from a sheen's record. */
final class SheenDrawings {
  private SheenDrawings() {}

  /** The drawing of a record's page. */
  static CaptionedDrawing page(LibraryRecord sheen) {
    return new CaptionedDrawing(
        Surfaces.sheen(swatch(sheen), title(sheen), "sheen"),
        "A window mirrored in it, blurred as its middle reading says; "
            + Display.text(sheen.facts().datum("gloss-60")));
  }

  /** The drawing beside others on one page. */
  static String patch(LibraryRecord sheen) {
    return Surfaces.sheenPatch(swatch(sheen), title(sheen), "sheen-" + sheen.id());
  }

  private static String title(LibraryRecord sheen) {
    return sheen.title() + ": a window in the film";
  }

  private static SheenSwatch swatch(LibraryRecord sheen) {
    SourcedRange gloss = sheen.facts().datum("gloss-60");
    boolean rubbed = sheen.facts().words("look").equals("rubbed");
    return new SheenSwatch(gloss.low(), gloss.high(), rubbed);
  }
}
