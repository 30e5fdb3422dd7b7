package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Prose;
import benchlore.generator.drawing.BoardCut;
import benchlore.generator.drawing.Drawings;
import benchlore.generator.planning.EngineData;
import benchlore.generator.planning.ToolDrawing;
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

  private RecordDrawings() {}

  /** Drawings fit for the record; none for most kinds. */
  static List<BitDrawings.Figure> of(LibraryRecord entry, Optional<ToolDrawing> tool) {
    List<BitDrawings.Figure> figures =
        new ArrayList<>(tool.map(t -> tool(entry, t)).stream().toList());
    figures.addAll(ofKind(entry));
    return figures;
  }

  private static List<BitDrawings.Figure> ofKind(LibraryRecord entry) {
    return switch (entry.kind()) {
      case ROUTER_BITS -> BitDrawings.of(entry);
      case SPECIES -> RINGLESS.contains(entry.id()) ? List.of() : boards(entry);
      case ABRASIVES -> grains(entry);
      case TECHNIQUES, TOOLS -> sketches(entry);
      case SHEENS -> List.of(SheenDrawings.of(entry));
      case DEFECTS -> fault(entry);
      case FINISHES, ADHESIVES, SOLVENTS, FASTENERS -> List.of();
    };
  }

  private static List<BitDrawings.Figure> fault(LibraryRecord entry) {
    String looks = Prose.plain(entry.text().looks());
    return entry.drawings().stream()
        .map(d -> Drawings.fault(d.name(), entry.title(), looks, "fault").orElseThrow())
        .map(svg -> new BitDrawings.Figure(svg, "The look of it, simplified"))
        .toList();
  }

  /** A sketch alone is titled as its page; of several, each as its caption. */
  private static List<BitDrawings.Figure> sketches(LibraryRecord entry) {
    List<BitDrawings.Figure> figures = new ArrayList<>();
    boolean alone = entry.drawings().size() == 1;
    for (LibraryRecord.Drawing drawing : entry.drawings()) {
      String title = alone ? entry.title() : drawing.caption();
      String ids = alone ? "sketch" : "sketch-" + (figures.size() + 1);
      String svg = Drawings.sketch(drawing.name(), title, ids).orElseThrow();
      figures.add(new BitDrawings.Figure(svg, drawing.caption()));
    }
    return figures;
  }

  private static BitDrawings.Figure tool(LibraryRecord entry, ToolDrawing tool) {
    String size =
        Display.text(tool.size().datum("wide")) + " by " + Display.text(tool.size().datum("high"));
    return new BitDrawings.Figure(
        Drawings.tool(tool.silhouette(), entry.title(), "tool"),
        "To scale; teeth and threads too fine to see are drawn coarser. As drawn "
            + size
            + ", "
            + origin(tool.size())
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
  private static List<BitDrawings.Figure> boards(LibraryRecord species) {
    Species wood = EngineData.wood(species);
    return List.of(
        board(BoardCut.FLAT, Movement.tangential(wood), "flat sawn", species),
        board(BoardCut.QUARTER, Movement.radial(wood), "quarter sawn", species));
  }

  private static BitDrawings.Figure board(
      BoardCut cut, SourcedRange movement, String words, LibraryRecord species) {
    String title = species.title() + ", " + words;
    return new BitDrawings.Figure(
        Drawings.boardGrain(cut, title, "board-" + cut.word()),
        Labels.capital(words) + ": its width moves " + Display.text(movement));
  }

  private static List<BitDrawings.Figure> grains(LibraryRecord abrasive) {
    Optional<SourcedRange> grain = abrasive.facts().optionalDatum("grain-size");
    if (grain.isEmpty()) {
      return List.of();
    }
    List<BitDrawings.Figure> figures = new ArrayList<>();
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

  private static BitDrawings.Figure grain(LibraryRecord abrasive, double micron, String end) {
    String size = Display.text(micron, micron, Unit.MICRON);
    return new BitDrawings.Figure(
        Drawings.grit(micron, abrasive.title() + ", grains of " + size, "grit-" + end),
        "Grains of " + size + "; read the scale bar");
  }
}
