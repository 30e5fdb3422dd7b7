package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.drawing.surface.BoardCut;
import benchlore.generator.drawing.surface.Surfaces;
import benchlore.generator.page.CaptionedDrawing;
import benchlore.generator.picture.ContentPictures;
import benchlore.generator.picture.ToolPicture;
import benchlore.generator.planning.EngineData;
import benchlore.generator.units.Display;
import benchlore.schedules.material.Species;
import benchlore.schedules.movement.Movement;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The drawings of a record's page, each with its caption. */
final class RecordDrawings {
  // Bamboo is a grass: it has no rings to saw across.
  private static final Set<String> RINGLESS = Set.of("bamboo");

  private final ContentPictures pictures;

  RecordDrawings(ContentPictures pictures) {
    this.pictures = pictures;
  }

  /** Drawings fit for the record; none for most kinds. */
  List<CaptionedDrawing> page(LibraryRecord entry) {
    List<CaptionedDrawing> figures = new ArrayList<>();
    ToolPicture tool = pictures.tools().get(entry.id());
    if (tool != null) {
      figures.add(tool(entry, tool));
    }
    figures.addAll(ofKind(entry));
    return figures;
  }

  private List<CaptionedDrawing> ofKind(LibraryRecord entry) {
    return switch (entry.kind()) {
      case ROUTER_BITS -> BitDrawings.page(entry);
      case SPECIES -> RINGLESS.contains(entry.id()) ? List.of() : boards(entry);
      case ABRASIVES -> grains(entry);
      case TECHNIQUES, TOOLS -> sketches(entry);
      case SHEENS -> List.of(SheenDrawings.page(entry));
      case DEFECTS -> fault(entry);
      case FINISHES, ADHESIVES, SOLVENTS, FASTENERS -> List.of();
    };
  }

  private List<CaptionedDrawing> fault(LibraryRecord entry) {
    return entry.drawings().stream()
        .map(d -> pictures.faults().get(d.name()).page(entry.title(), "fault"))
        .map(svg -> new CaptionedDrawing(svg, "The look of it, simplified"))
        .toList();
  }

  /** A sketch alone is titled as its page; of several, each as its caption. */
  private List<CaptionedDrawing> sketches(LibraryRecord entry) {
    List<CaptionedDrawing> figures = new ArrayList<>();
    boolean alone = entry.drawings().size() == 1;
    for (LibraryRecord.Drawing drawing : entry.drawings()) {
      String title = alone ? entry.title() : drawing.caption();
      String ids = alone ? "sketch" : "sketch-" + (figures.size() + 1);
      String svg = pictures.sketches().get(drawing.name()).page(title, ids);
      figures.add(new CaptionedDrawing(svg, drawing.caption()));
    }
    return figures;
  }

  private static CaptionedDrawing tool(LibraryRecord entry, ToolPicture tool) {
    SourcedRange wide = entry.drawn().datum("wide");
    SourcedRange high = entry.drawn().datum("high");
    String size = Display.text(wide) + " by " + Display.text(high);
    return new CaptionedDrawing(
        tool.page("tool", wide.mid() * 1_000, high.mid() * 1_000),
        "To scale; teeth and threads too fine to see are drawn coarser. As drawn "
            + size
            + ", "
            + origin(entry.drawn())
            + ".");
  }

  /** Where a drawing's size comes from, in a few words. */
  private static String origin(Facts size) {
    List<String> origins = new ArrayList<>();
    for (String side : List.of("wide", "high")) {
      Provenance from = size.datum(side).from();
      String words =
          from.kind() == Provenance.Kind.SOURCE
              ? from.title() + ", " + from.where()
              : Labels.trust(from.kind()).toLowerCase(Locale.ROOT);
      if (!origins.contains(words)) {
        origins.add(words);
      }
    }
    return String.join(" and ", origins);
  }

  /** How a board of this wood moves in width, sawn flat and quartered. */
  private static List<CaptionedDrawing> boards(LibraryRecord species) {
    Species wood = EngineData.wood(species);
    return List.of(
        board(BoardCut.FLAT, Movement.tangential(wood), "flat sawn", species),
        board(BoardCut.QUARTER, Movement.radial(wood), "quarter sawn", species));
  }

  private static CaptionedDrawing board(
      BoardCut cut, SourcedRange movement, String words, LibraryRecord species) {
    String title = species.title() + ", " + words;
    return new CaptionedDrawing(
        Surfaces.board(cut, title, "board-" + cut.word()),
        Labels.capital(words) + ": its width moves " + Display.text(movement));
  }

  private static List<CaptionedDrawing> grains(LibraryRecord abrasive) {
    Optional<SourcedRange> grain = abrasive.facts().optionalDatum("grain-size");
    if (grain.isEmpty()) {
      return List.of();
    }
    List<CaptionedDrawing> figures = new ArrayList<>();
    if (shown(grain.get().high())) {
      figures.add(grain(abrasive, grain.get().high(), "coarse"));
    }
    if (grain.get().low() < grain.get().high() && shown(grain.get().low())) {
      figures.add(grain(abrasive, grain.get().low(), "fine"));
    }
    return figures;
  }

  /** Grains the drawing's scale holds; finer powder is a haze at any scale. */
  private static boolean shown(double micron) {
    return micron >= 1 && micron <= 5_000;
  }

  private static CaptionedDrawing grain(LibraryRecord abrasive, double micron, String end) {
    String size = Display.text(micron, micron, Unit.MICRON);
    return new CaptionedDrawing(
        Surfaces.grit(micron, abrasive.title() + ", grains of " + size, "grit-" + end),
        "Grains of " + size + "; read the scale bar");
  }
}
