package benchlore.schedules.coating;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.caution.CoatingRows;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Working and cautions of the ways to a sheen. */
final class SheenWorking {
  private final SheenRequest request;
  private final double filmMicron;

  SheenWorking(SheenRequest request, DryingTimes drying) {
    this.request = request;
    this.filmMicron = drying.dryFilmMicron() * request.job().coats();
  }

  List<WorkingLine> lines(List<SheenWay> ways) {
    List<WorkingLine> lines = new ArrayList<>();
    SourcedRange pace = RubChain.PACE;
    double area = request.job().area().totalSquareMetre();
    for (SheenWay way : ways) {
      lines.add(
          new WorkingLine(
              QuantityKey.WAY_TO_SHEEN,
              Figure.computed("work: " + words(way.kind()), way.seconds(), Unit.SECOND),
              "work = steps x area x pace",
              List.of(
                  Figure.computed("steps", way.steps().size(), Unit.COUNT),
                  Figure.computed("area", area, Unit.SQUARE_METRE),
                  Figure.of("pace", pace.high(), pace.unit(), pace.from())),
              RubChain.from()));
    }
    return lines;
  }

  List<Caution> cautions(List<SheenWay> ways) {
    List<Caution> cautions = new ArrayList<>();
    for (SheenWay way : ways) {
      switch (way.kind()) {
        case RUB_OUT -> rubbing(cautions, way);
        case LAST_COAT -> coating(cautions);
        case LEAVE -> {}
      }
    }
    return cautions;
  }

  private void rubbing(List<Caution> cautions, SheenWay way) {
    boolean levels = way.steps().size() > 1;
    if (levels && filmMicron < 2 * RubChain.TAKES.high()) {
      cautions.add(rubThrough());
    }
    if (levels && request.job().finish().film().bond() != CoatBond.MELTS_IN) {
      cautions.add(witnessLines());
    }
  }

  private void coating(List<Caution> cautions) {
    if (request.wanted() != Sheen.GLOSS) {
      cautions.add(stir());
    }
  }

  private Caution rubThrough() {
    return CoatingRows.RUB_THROUGH.caution(
        Quantity.of(filmMicron, Unit.MICRON), Quantity.of(RubChain.TAKES.high(), Unit.MICRON));
  }

  private static Caution witnessLines() {
    return CoatingRows.WITNESS_LINES.caution();
  }

  private static Caution stir() {
    return CoatingRows.STIR_FLATTING.caution();
  }

  private static String words(SheenWay.Kind kind) {
    return switch (kind) {
      case LEAVE -> "leave it";
      case LAST_COAT -> "one more coat of the sheen wanted";
      case RUB_OUT -> "rub the cured film";
    };
  }
}
