package benchlore.schedules.movement;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.movement.FitSchedule.Moistures;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * What to watch for when wood is fitted. All are about the work; nobody is hurt by a tight drawer.
 */
final class FitCautions {
  private final FitRequest request;
  private final FitSchedule schedule;
  private final List<Caution> cautions = new ArrayList<>();

  FitCautions(FitRequest request, FitSchedule schedule) {
    this.request = request;
    this.schedule = schedule;
  }

  List<Caution> all() {
    seasons();
    moisture();
    settling();
    schedule.clearance().ifPresent(this::clearance);
    schedule.fixing().ifPresent(this::fixing);
    return cautions;
  }

  private void seasons() {
    if (request.seasons().from().kind() == Provenance.Kind.FROM_MEMORY) {
      add(
          "seasons-are-a-guess",
          Message.of("The air of the two seasons is a rough figure for such a place, not yours."),
          Message.of(
              "Hang a cheap hygrometer there; give the driest and dampest month it shows, or"
                  + " measure an old board of the same wood in both."));
    }
  }

  private void moisture() {
    Moistures moisture = schedule.moisture();
    if (moisture.dryPercent() < FitFigures.STRAIGHT_LOW_PERCENT
        || moisture.dampPercent() > FitFigures.STRAIGHT_HIGH_PERCENT) {
      add(
          "movement-outside-straight-range",
          Message.of(
              "The year runs from {0} to {1} moisture; the movement figures are proven only from"
                  + " {2} to {3}.",
              percent(moisture.dryPercent()),
              percent(moisture.dampPercent()),
              percent(FitFigures.STRAIGHT_LOW_PERCENT),
              percent(FitFigures.STRAIGHT_HIGH_PERCENT)),
          Message.of("Leave a little more room than the figure and check it in the damp season."));
    }
    double off = request.moisturePercent() - moisture.middlePercent();
    if (Math.abs(off) > FitFigures.OFF_MIDDLE_POINTS) {
      add(
          "wood-off-service-moisture",
          Message.of(
              "The wood is at {0}; where it will live it averages {1}.",
              percent(request.moisturePercent()), percent(moisture.middlePercent())),
          Message.of(
              "Bring it nearer before fitting, or expect the gap to change by the figures."));
    }
  }

  private void settling() {
    if (schedule.settling().highSecond() > 0) {
      add(
          "let-wood-settle",
          Message.of(
              "The wood and the shop's air differ; it will move after it is cut. {0} to {1} is a"
                  + " rule of thumb, not a measurement.",
              Quantity.of(schedule.settling().lowSecond(), Unit.SECOND),
              Quantity.of(schedule.settling().highSecond(), Unit.SECOND)),
          Message.of(
              "Stack it on stickers with air all round until two meter readings a week apart"
                  + " agree."));
      if (request.shop().celsius() < FitFigures.SLOW_CELSIUS) {
        add(
            "cold-wood-settles-slowly",
            Message.of("In air this cold, wood takes far longer to settle than the range says."),
            Message.of("Let it lie somewhere warmer, or trust only the meter."));
      }
    }
  }

  private void clearance(FitSchedule.Clearance clearance) {
    add(
        "dry-fit-first",
        Message.of("Finish on both faces closes a gap that was right on bare wood."),
        Message.of(
            "Test-fit with tape in place of the film before the first coat; take the tape off"
                + " before finishing."));
    if (clearance.stacks().isEmpty()) {
      add(
          "gap-too-wide-for-tape",
          Message.of(
              "The gap of {0} takes too many layers of every tape given; a thick stack squashes.",
              Quantity.of(clearance.gapMetre(), Unit.METRE)),
          Message.of("Use a slip of wood or card planed to the gap, checked with a caliper."));
    }
    if (clearance.drySeasonGapMetre() > FitFigures.WIDE_GAP_METRE) {
      add(
          "wide-gap-when-dry",
          Message.of(
              "In the dry season the finished gap opens to {0}.",
              Quantity.of(clearance.drySeasonGapMetre(), Unit.METRE)),
          Message.of("Use quarter-sawn wood, a narrower part, or a framed panel instead."));
    }
  }

  private void fixing(FitSchedule.Fixing fixing) {
    if (!fixing.rigidAllowed()) {
      add(
          "panel-must-move",
          Message.of(
              "Screwed or glued tight across the grain, this panel will split or bow its base."),
          Message.of(
              "Fix it tight in one place only; elsewhere use the slots, with washers, screws snug"
                  + " but not hard down, and no glue."));
    }
  }

  private void add(String code, Message what, Message measure) {
    cautions.add(new Caution(code, Caution.Severity.WORK, what, measure));
  }

  private static Quantity percent(double value) {
    return Quantity.of(value, Unit.PERCENT);
  }
}
