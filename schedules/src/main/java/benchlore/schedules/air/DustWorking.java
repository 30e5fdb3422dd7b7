package benchlore.schedules.air;

import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** How a dust schedule was worked out, a line a figure. */
final class DustWorking {
  private static final Provenance BALANCE = Provenance.commonPractice("balance of mass");

  private DustWorking() {}

  static List<WorkingLine> of(DustRequest request, DustSchedule schedule) {
    List<WorkingLine> lines = new ArrayList<>();
    lines.add(airborne(request, schedule));
    lines.add(peak(request, schedule));
    Figure limit =
        Figure.of(
            "limit, " + schedule.governing(),
            schedule.governing().kilogramPerCubicMetre(),
            Unit.AIRBORNE_KILOGRAM_PER_CUBIC_METRE,
            schedule.governing().from());
    lines.add(
        new WorkingLine(
            QuantityKey.DUST_EIGHT_HOUR_SHARE,
            Figure.computed("8-hour share of the limit", schedule.eightHourIndex(), Unit.RATIO),
            "share = (airborne - still in the air after 8 hours) / flow / 8 hours / limit",
            List.of(limit),
            AirWorking.AVERAGE));
    lines.add(
        new WorkingLine(
            QuantityKey.DUST_OUTDOOR_AIR_NEEDED,
            Figure.computed(
                "outdoor air needed", schedule.flowNeeded(), Unit.CUBIC_METRE_PER_SECOND),
            "flow = mixing factor x airborne in 8 hours / 8 hours / limit",
            List.of(limit),
            AirWorking.DILUTION));
    lines.add(mask(schedule));
    if (schedule.clearSecond().isPresent()) {
      lines.add(
          new WorkingLine(
              QuantityKey.CLEAR_AFTER_SANDING,
              Figure.computed(
                  "clear after sanding", schedule.clearSecond().getAsDouble(), Unit.SECOND),
              "time = ln(highest / limit) x volume x mixing factor / flow",
              List.of(limit),
              AirWorking.DILUTION));
    }
    return lines;
  }

  /** What chooses the mask. */
  private static WorkingLine mask(DustSchedule schedule) {
    return new WorkingLine(
        QuantityKey.FACE_INDEX,
        Figure.computed(
            "index that chooses the mask",
            Dust.worst(schedule.eightHourIndex(), schedule.peakIndex()),
            Unit.RATIO),
        "index = the greater of the 8-hour share and the highest / what short spells may reach;"
            + " above 10 a full facepiece",
        List.of(
            Figure.computed("8-hour share", schedule.eightHourIndex(), Unit.RATIO),
            Figure.computed("highest", schedule.peakIndex(), Unit.RATIO),
            Figure.of("short spells", LimitScale.EXCURSION, Unit.RATIO, LimitScale.EXCURSION_FROM)),
        Respirator.FROM);
  }

  private static WorkingLine airborne(DustRequest request, DustSchedule schedule) {
    SourcedRange capture = request.capture().share();
    Figure share =
        request.airborneShare().isPresent()
            ? Figure.input("airborne share", request.airborneShare().getAsDouble(), Unit.RATIO)
            : Figure.of(
                "airborne share",
                Dust.AIRBORNE_SHARE,
                Unit.RATIO,
                Provenance.fromMemory("share of uncaught sanding dust that stays in the air"));
    return new WorkingLine(
        QuantityKey.AIRBORNE_DUST,
        Figure.computed("airborne dust", schedule.airborneKilogram(), Unit.KILOGRAM),
        "airborne = removed x (1 - captured share) x airborne share",
        List.of(
            Figure.input("removed", request.removedKilogram(), Unit.KILOGRAM),
            Figure.of("captured share", capture.low(), Unit.RATIO, capture.from()),
            share),
        BALANCE);
  }

  private static WorkingLine peak(DustRequest request, DustSchedule schedule) {
    return new WorkingLine(
        QuantityKey.HIGHEST_DUST_IN_THE_AIR,
        Figure.computed(
            "highest dust in the air",
            schedule.peakKilogramPerCubicMetre(),
            Unit.AIRBORNE_KILOGRAM_PER_CUBIC_METRE),
        "highest = airborne / time / (flow / mixing factor) x (1 - exp(-changes x time))",
        List.of(
            Figure.input("sanding time", request.sandingSecond(), Unit.SECOND),
            Figure.input("room volume", request.room().volume(), Unit.CUBIC_METRE),
            Figure.input("outdoor air", request.room().outdoorFlow(), Unit.CUBIC_METRE_PER_SECOND),
            Figure.input("mixing factor", request.room().mixingFactor(), Unit.RATIO)),
        AirWorking.DILUTION);
  }
}
