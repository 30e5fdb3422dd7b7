package benchlore.schedules.coating;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.CoatingRows;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cautions of one coat that don't hang on the hour: thickness, window, pot life, rags. */
final class CoatingCautions {
  private CoatingCautions() {}

  static List<Caution> of(DryingRequest request, DryingTimes times) {
    List<Caution> cautions = new ArrayList<>();
    Finish finish = request.finish();
    if (request.wetFilmMicron() > finish.film().wetFilm().high()) {
      cautions.add(thick(request));
    }
    if (times.time(Stage.RECOAT_CLOSES).isPresent() && !times.windowKnown()) {
      cautions.add(CoatingRows.RECOAT_WINDOW_NARROW.caution());
    }
    Optional<Duration> pot = times.potLife();
    pot.ifPresent(life -> cautions.add(potLife(life)));
    if (finish.liquid().hazards().selfHeatingRags()) {
      cautions.add(ShopRows.OILY_RAGS.caution());
    }
    if (finish.family() == FinishFamily.EPOXY) {
      cautions.add(ShopRows.EPOXY_SKIN.caution());
    }
    return cautions;
  }

  private static Caution thick(DryingRequest request) {
    return CoatingRows.THICK_FILM.caution(
        List.of(Quantity.of(request.wetFilmMicron(), Unit.MICRON)),
        List.of(Quantity.of(request.finish().film().wetFilm().high(), Unit.MICRON)));
  }

  private static Caution potLife(Duration life) {
    return CoatingRows.POT_LIFE.caution(Quantity.of(life.seconds(), Unit.SECOND));
  }
}
