package benchlore.schedules.coating;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.material.Finish;
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
    if (request.wetFilmMicron() > finish.wetFilmMicron().high()) {
      cautions.add(thick(request));
    }
    if (times.time(Stage.RECOAT_CLOSES).isPresent() && !times.windowKnown()) {
      cautions.add(narrow());
    }
    Optional<Duration> pot = times.potLife();
    pot.ifPresent(life -> cautions.add(potLife(life)));
    if (finish.selfHeatingRags()) {
      cautions.add(rags());
    }
    return cautions;
  }

  private static Caution thick(DryingRequest request) {
    return new Caution(
        "thick-film",
        Caution.Severity.WORK,
        Message.of(
            "A coat of {0} is thicker than this finish is made for: it may skin over, sag or"
                + " wrinkle, and the waits are the least to count on.",
            Quantity.of(request.wetFilmMicron(), Unit.MICRON)),
        Message.of(
            "Put on several coats of at most {0}.",
            Quantity.of(request.finish().wetFilmMicron().high(), Unit.MICRON)));
  }

  private static Caution narrow() {
    return new Caution(
        "recoat-window-narrow",
        Caution.Severity.WORK,
        Message.of("In this air the recoat window may close before it is sure to be open."),
        Message.of("Plan to wait until it sands to powder, scuff it, and only then recoat."));
  }

  private static Caution potLife(Duration life) {
    return new Caution(
        "pot-life",
        Caution.Severity.WORK,
        Message.of(
            "Once mixed, use the batch within {0}; warmth shortens it.",
            Quantity.of(life.seconds(), Unit.SECOND)),
        Message.of("Mix only what this coat takes, and clean the tools before it sets."));
  }

  private static Caution rags() {
    return new Caution(
        "oily-rags",
        Caution.Severity.DANGER,
        Message.of(
            "Rags, pads and dust wet with this finish heat up by themselves and catch fire."),
        Message.of(
            "Spread them flat outdoors until hard, or soak them in water in a closed metal can;"
                + " never heap them or bin them wet."));
  }
}
