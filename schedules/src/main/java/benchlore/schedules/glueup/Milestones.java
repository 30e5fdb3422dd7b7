package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpSchedule.Batch;
import benchlore.schedules.glueup.GlueUpSchedule.Milestone;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.room.EquivalentAge;
import benchlore.schedules.room.EquivalentAge.Rate;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When the whole assembly may be unclamped, handled, machined and loaded, counted from the moment
 * its last batch is tight.
 *
 * @param clampsOff the last clamps come off
 * @param handle gentle handling
 * @param machine machining across the joint
 * @param fullLoad full load
 */
record Milestones(Milestone clampsOff, Milestone handle, Milestone machine, Milestone fullLoad) {
  /** Seconds in clamps for a joint pressed at a moment; empty if it never sets. */
  static OptionalDouble clampSeconds(GlueUpRequest request, Moment tight) {
    Rate setting = SettingRates.setting(request.adhesive(), request.wood());
    double label = request.adhesive().times().clampTime().high();
    return EquivalentAge.secondsUntil(request.climate(), tight, label, setting);
  }

  /** The moments after these batches; empty if the air never lets the joint reach one of them. */
  static Optional<Milestones> of(GlueUpRequest request, List<Batch> batches) {
    Adhesive adhesive = request.adhesive();
    Rate setting = SettingRates.setting(adhesive, request.wood());
    Moment tight = batches.get(batches.size() - 1).tight();
    Moment off = Batches.last(batches);
    double machineLabel = machineLabel(adhesive).high();
    OptionalDouble handled =
        EquivalentAge.secondsUntil(
            request.climate(), tight, adhesive.times().handleAfter().high(), setting);
    OptionalDouble loaded =
        EquivalentAge.secondsUntil(
            request.climate(), tight, adhesive.times().fullStrength().high(), setting);
    OptionalDouble settled =
        EquivalentAge.secondsUntil(
            request.climate(), tight, machineLabel, machineRate(adhesive, setting));
    if (handled.isEmpty() || loaded.isEmpty() || settled.isEmpty()) {
      return Optional.empty();
    }
    Moment handle = off.orLater(after(tight, handled.getAsDouble()));
    Moment machine = handle.orLater(after(tight, settled.getAsDouble()));
    Moment load = handle.orLater(after(tight, loaded.getAsDouble()));
    Moment start = request.start();
    return Optional.of(
        new Milestones(
            moment(start, off),
            moment(start, handle),
            moment(start, machine),
            moment(start, load)));
  }

  /** The adhesive's own wait, else 7 days if it brings water, else until it may be handled. */
  static SourcedRange machineLabel(Adhesive adhesive) {
    return adhesive
        .times()
        .machineAfter()
        .orElseGet(
            () ->
                adhesive.waterBased()
                    ? SettingRates.MACHINE_AFTER
                    : adhesive.times().handleAfter());
  }

  private static Rate machineRate(Adhesive adhesive, Rate setting) {
    return adhesive.waterBased() ? SettingRates.machining() : setting;
  }

  private static Milestone moment(Moment start, Moment at) {
    return new Milestone(at, start.secondsUntil(at));
  }

  private static Moment after(Moment from, double seconds) {
    return from.plusSeconds(Numeric.ceil(seconds));
  }
}
