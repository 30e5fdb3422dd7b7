package benchlore.schedules.glueup;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.caution.GlueUpRows;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What to watch for in a glue-up that is otherwise fine. */
final class GlueUpCautions {
  /** A pressure this close to the least is the least. */
  private static final double ROUNDING = 0.999;

  private static final int MOST_PEOPLE = 4;

  private final GlueUpRequest request;
  private final GlueUpSchedule schedule;
  private final Adhesive adhesive;
  private final List<Caution> cautions = new ArrayList<>();

  private GlueUpCautions(GlueUpRequest request, GlueUpSchedule schedule) {
    this.request = request;
    this.schedule = schedule;
    this.adhesive = request.adhesive();
  }

  /** All that apply. */
  static List<Caution> of(GlueUpRequest request, GlueUpSchedule schedule) {
    GlueUpCautions found = new GlueUpCautions(request, schedule);
    found.cautions.addAll(AdhesiveHazard.of(request.adhesive().family()));
    found.surface();
    found.moisture();
    found.humidity();
    found.clamps();
    found.batches();
    found.afterwards();
    return found.cautions;
  }

  private void surface() {
    Quantity fresh = Quantity.of(GlueUpFigures.FRESH.low(), Unit.SECOND);
    if (request.wood().sinceMachinedSecond() > GlueUpFigures.FRESH.low()) {
      cautions.add(GlueUpRows.STALE_SURFACE.caution(fresh));
    }
    if (request.wood().oily()) {
      cautions.add(GlueUpRows.OILY_WOOD.caution(List.of(), List.of(fresh)));
      cautions.add(ShopRows.SOLVENT_WIPE.caution());
    }
  }

  private void moisture() {
    double driest = request.wood().driestPercent();
    double wettest = request.wood().wettestPercent();
    Quantity dry = Quantity.of(driest, Unit.PERCENT);
    Quantity wet = Quantity.of(wettest, Unit.PERCENT);
    if (wettest - driest > GlueUpFigures.APART.high()) {
      Quantity apart = Quantity.of(GlueUpFigures.APART.high(), Unit.PERCENT);
      cautions.add(GlueUpRows.MOISTURE_APART.caution(List.of(dry, wet), List.of(apart)));
    }
    double damp = WoodLimits.most(adhesive).low();
    if (wettest > damp) {
      Quantity most = Quantity.of(damp, Unit.PERCENT);
      cautions.add(GlueUpRows.DAMP_WOOD.caution(List.of(wet), List.of(most)));
    }
    if (driest < WoodLimits.least(adhesive).high()) {
      boolean thirsty = WoodLimits.livesOnWater(adhesive);
      cautions.add((thirsty ? GlueUpRows.TOO_DRY_TO_CURE : GlueUpRows.DRY_WOOD).caution(dry));
    }
  }

  private void humidity() {
    double percent = request.climate().at(request.start()).relativeHumidityPercent();
    if (adhesive.setting() == Adhesive.Setting.WATER_LOSS && percent > GlueUpFigures.HUMID.high()) {
      cautions.add(GlueUpRows.HUMID_AIR.caution(Quantity.of(percent, Unit.PERCENT)));
    }
  }

  private void clamps() {
    for (int i = 0; i < schedule.rows().size(); i++) {
      Row row = schedule.rows().get(i);
      if (row.count() == 0) {
        continue;
      }
      if (row.pressurePascal() < schedule.pressure().lowPascal() * ROUNDING) {
        pressureShort(request.joints().get(i), row);
      }
      double area = request.joints().get(i).areaSquareMetre();
      double full = row.count() * request.clamps().forceNewton();
      if (full > area * schedule.pressure().highPascal()) {
        overClamping(row);
      }
    }
  }

  private void pressureShort(Joint joint, Row row) {
    double most = ClampRoom.mostPascal(joint, request.clamps());
    if (most < schedule.pressure().lowPascal()) {
      cautions.add(
          GlueUpRows.NO_ROW_OF_CLAMPS
              .with("joint", row.joint())
              .caution(
                  Quantity.of(schedule.pressure().lowPascal(), Unit.PASCAL),
                  Quantity.of(ClampRoom.most(joint, request.clamps()), Unit.COUNT),
                  Quantity.of(most, Unit.PASCAL)));
      return;
    }
    cautions.add(
        GlueUpRows.PRESSURE_SHORT
            .with("joint", row.joint())
            .caution(
                Quantity.of(row.pressurePascal(), Unit.PASCAL),
                Quantity.of(row.count(), Unit.COUNT),
                Quantity.of(row.neededForForce(), Unit.COUNT)));
  }

  private void overClamping(Row row) {
    cautions.add(
        GlueUpRows.OVER_CLAMPING
            .with("joint", row.joint())
            .caution(
                List.of(Quantity.of(schedule.pressure().highPascal(), Unit.PASCAL)),
                List.of(Quantity.of(row.forceEachNewton(), Unit.NEWTON))));
  }

  private void batches() {
    int count = schedule.batches().size();
    if (count == 1) {
      return;
    }
    int people = peopleForOneGo();
    List<Quantity> hands = people > 0 ? List.of(Quantity.of(people, Unit.COUNT)) : List.of();
    cautions.add(
        GlueUpRows.SUB_ASSEMBLIES
            .with("hands", people > 0 ? " With {0} pairs of hands it closes in one go." : "")
            .caution(
                List.of(
                    Quantity.of(count, Unit.COUNT),
                    Quantity.of(clampsAtOnce(), Unit.COUNT),
                    Quantity.of(request.clamps().count(), Unit.COUNT)),
                hands));
  }

  private int clampsAtOnce() {
    int clamps = 0;
    for (int i = 0; i < schedule.rows().size(); i++) {
      Joint joint = request.joints().get(i);
      int rows = joint.arrangement() == Arrangement.IN_LINE ? 1 : joint.count();
      clamps = rows * schedule.rows().get(i).count() + clamps;
    }
    return clamps;
  }

  /** The fewest people who close all of it at once; 0 if more than {@value #MOST_PEOPLE}. */
  private int peopleForOneGo() {
    BatchLimits limits = BatchLimits.at(request, request.start());
    int shelf = request.clamps().count();
    for (int people = request.pace().people() + 1; people <= MOST_PEOPLE; people++) {
      BatchBuilder all = BatchBuilder.of(GlueUp.tasks(request, schedule.rows(), people));
      if (all.clamps() <= shelf && all.orderWithin(limits).isPresent()) {
        return people;
      }
    }
    return 0;
  }

  private void afterwards() {
    if (adhesive.waterBased()) {
      Quantity after = Quantity.of(schedule.machine().afterSecond(), Unit.SECOND);
      cautions.add(GlueUpRows.SUNKEN_JOINT.caution(List.of(), List.of(after)));
    }
    if (adhesive.bond().creeps()) {
      cautions.add(GlueUpRows.CREEP.caution());
    }
    if (adhesive.bond().waterResistance() == Adhesive.WaterResistance.NONE) {
      cautions.add(GlueUpRows.KEEP_DRY.caution());
    }
    coldBeforeFullStrength();
  }

  /** Cold after the clamps are off: when, and how long to keep it warm. */
  private void coldBeforeFullStrength() {
    double minimum = adhesive.air().minimumTemperature().high();
    Moment off = schedule.clampsOff().at();
    double left = off.secondsUntil(schedule.fullLoad().at());
    OptionalDouble cold = AirExtremes.firstBelow(request.climate(), off, left, minimum);
    if (cold.isPresent()) {
      Quantity least = Quantity.of(minimum, Unit.CELSIUS);
      cautions.add(
          GlueUpRows.COLD_NIGHT.caution(
              List.of(least, Quantity.of(cold.getAsDouble(), Unit.SECOND)),
              List.of(least, Quantity.of(left, Unit.SECOND))));
    }
  }
}
