package benchlore.schedules.glueup;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.glueup.GlueUpRequest.Arrangement;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

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
      work(
          "stale-surface",
          Message.of("A cut face starts to change within {0} and bonds less well after.", fresh),
          Message.of("Take a light cut or abrade across the face just before you spread."));
    }
    if (request.wood().oily()) {
      work(
          "oily-wood",
          Message.of("Oil creeps back to a cleaned face and keeps the adhesive off the wood."),
          Message.of(
              "Scrape or abrade the faces just before glueing, brush off the dust, and spread"
                  + " within {0}. Glue a test piece and break it.",
              fresh));
      cautions.add(
          new Caution(
              "solvent-wipe",
              Caution.Severity.DANGER,
              Message.of("If the label asks for a solvent wipe: its vapour catches fire far away."),
              Message.of(
                  "No flame, heater or spark; open the doors, wear the gloves its safety data"
                      + " sheet names, and dry the rags flat outdoors.")));
    }
  }

  private void moisture() {
    double driest = request.wood().driestPercent();
    double wettest = request.wood().wettestPercent();
    Quantity dry = Quantity.of(driest, Unit.PERCENT);
    Quantity wet = Quantity.of(wettest, Unit.PERCENT);
    if (wettest - driest > GlueUpFigures.APART.high()) {
      work(
          "moisture-apart",
          Message.of("Parts at {0} and {1} moisture will move against each other.", dry, wet),
          Message.of(
              "Let them lie together until they are within {0}, or the joint opens or steps.",
              Quantity.of(GlueUpFigures.APART.high(), Unit.PERCENT)));
    }
    if (wettest > GlueUpFigures.DAMP.high()) {
      work(
          "damp-wood",
          Message.of("Wood at {0} sets slowly and shrinks after.", wet),
          Message.of(
              "Dry it to {0} or less first.",
              Quantity.of(GlueUpFigures.DAMP.high(), Unit.PERCENT)));
    }
    boolean foaming = adhesive.setting() == Adhesive.Setting.MOISTURE_REACTION;
    if (foaming && driest < GlueUpFigures.FOAMING_DRY.low()) {
      work(
          "too-dry-to-cure",
          Message.of("This adhesive cures on moisture; wood at {0} has little to give.", dry),
          Message.of("Wipe one face with a damp cloth, as the label says, before you spread."));
    } else if (driest < GlueUpFigures.DRY.low()) {
      work(
          "dry-wood",
          Message.of("Wood at {0} drinks the adhesive quickly.", dry),
          Message.of("Spread both faces and close sooner than usual."));
    }
  }

  private void humidity() {
    double percent = request.climate().at(request.start()).relativeHumidityPercent();
    if (adhesive.setting() == Adhesive.Setting.WATER_LOSS && percent > GlueUpFigures.HUMID.high()) {
      work(
          "humid-air",
          Message.of(
              "At {0} humidity the water has nowhere to go.", Quantity.of(percent, Unit.PERCENT)),
          Message.of("Dry the air, or leave the clamps on longer than planned and test a scrap."));
    }
  }

  private void clamps() {
    for (int i = 0; i < schedule.rows().size(); i++) {
      Row row = schedule.rows().get(i);
      if (row.count() == 0) {
        continue;
      }
      if (row.pressurePascal() < schedule.pressure().lowPascal() * ROUNDING) {
        pressureShort(row);
      }
      double area = request.joints().get(i).areaSquareMetre();
      double full = row.count() * request.clamps().forceNewton();
      if (full > area * schedule.pressure().highPascal()) {
        overClamping(row);
      }
    }
  }

  private void pressureShort(Row row) {
    work(
        "pressure-short",
        Message.of(
            "\"" + row.joint() + "\" gets {0} with {1} clamps; {2} would give the least advised.",
            Quantity.of(row.pressurePascal(), Unit.PASCAL),
            Quantity.of(row.count(), Unit.COUNT),
            Quantity.of(row.neededForForce(), Unit.COUNT)),
        Message.of("Use more or stronger clamps, or see that the dry joint closes by hand."));
  }

  private void overClamping(Row row) {
    work(
        "over-clamping",
        Message.of(
            "Clamps at full force press \"" + row.joint() + "\" past {0} and starve the line.",
            Quantity.of(schedule.pressure().highPascal(), Unit.PASCAL)),
        Message.of(
            "Tighten to about {0} a clamp: an even thin bead along the line, then stop.",
            Quantity.of(row.forceEachNewton(), Unit.NEWTON)));
  }

  private void batches() {
    int count = schedule.batches().size();
    if (count == 1) {
      return;
    }
    int clamps = clampsAtOnce();
    int people = peopleForOneGo();
    String dry = "Dry-fit the whole first; take a light cut off later joints before their turn.";
    work(
        "sub-assemblies",
        Message.of(
            "It can't all be closed in one go: glue it in {0} steps. At once it would take {1} clamps"
                + " of the {2} there are.",
            Quantity.of(count, Unit.COUNT),
            Quantity.of(clamps, Unit.COUNT),
            Quantity.of(request.clamps().count(), Unit.COUNT)),
        people > 0
            ? Message.of(
                dry + " With {0} pairs of hands it closes in one go.",
                Quantity.of(people, Unit.COUNT))
            : Message.of(dry));
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
      BatchBuilder all = BatchBuilder.of(GlueUp.tasks(request, schedule.rows(), people), shelf);
      if (all.clamps() <= shelf && all.orderWithin(limits).isPresent()) {
        return people;
      }
    }
    return 0;
  }

  private void afterwards() {
    if (adhesive.waterBased()) {
      work(
          "sunken-joint",
          Message.of("Water in the adhesive swells the wood at the joint for days."),
          Message.of(
              "Cut flush only after {0}: planed sooner, the joint sinks when it dries and shows"
                  + " under gloss.",
              Quantity.of(schedule.machine().afterSecond(), Unit.SECOND)));
    }
    if (adhesive.creeps()) {
      work(
          "creep",
          Message.of("This adhesive gives slowly under steady load."),
          Message.of("Not for bent laminations, loaded joints without a shoulder, or hot places."));
    }
    if (adhesive.waterResistance() == Adhesive.WaterResistance.NONE) {
      work(
          "keep-dry",
          Message.of("The set joint lets go when it gets wet."),
          Message.of("Indoors and dry only; seal it if damp may reach it."));
    }
    double minimum = adhesive.minimumCelsius().high();
    double until = schedule.fullLoad().afterSecond();
    double coldest = AirExtremes.coldestCelsius(request.climate(), request.start(), until);
    if (Math.min(coldest, request.climate().lowestCelsius()) < minimum) {
      work(
          "cold-night",
          Message.of(
              "The room falls below {0}; the joint gains nothing in those hours.",
              Quantity.of(minimum, Unit.CELSIUS)),
          Message.of("Keep it warm until full strength, or wait as long as planned here."));
    }
  }

  private void work(String code, Message what, Message measure) {
    cautions.add(new Caution(code, Caution.Severity.WORK, what, measure));
  }
}
