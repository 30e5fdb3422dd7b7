package benchlore.schedules.glueup;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.List;

/** The hard stops: a joint made past one of these does not hold, however long it stays clamped. */
final class Preconditions {
  private Preconditions() {}

  /** Stops that show before anything is planned. */
  static List<Refusal> before(GlueUpRequest request) {
    Adhesive adhesive = request.adhesive();
    Checks checks = new Checks();
    double now = request.climate().at(request.start()).celsius();
    double minimum = adhesive.air().minimumTemperature().high();
    if (now < minimum) {
      checks.add(cold(request, now));
    }
    adhesive
        .air()
        .maximumTemperature()
        .filter(maximum -> now > maximum.low())
        .ifPresent(maximum -> checks.add(hot(now, maximum.low())));
    checks.require(
        !(request.wood().oily() && adhesive.bond().oilyWoods() == Adhesive.OilyWoods.AVOID),
        "adhesive",
        "This adhesive can't be relied on to hold oily or resinous wood.",
        "Use one that takes oily wood, such as an epoxy, on freshly abraded faces.");
    double wettest = request.wood().wettestPercent();
    if (wettest > WoodLimits.most(adhesive).high()) {
      checks.add(wet(adhesive, wettest));
    }
    for (Joint joint : request.joints()) {
      gap(checks, joint, adhesive);
    }
    return checks.refusals();
  }

  /** Rows that cannot be pressed evenly with every clamp there is. */
  static List<Refusal> rows(GlueUpRequest request, List<Row> rows) {
    Clamps clamps = request.clamps();
    Checks checks = new Checks();
    for (int i = 0; i < rows.size(); i++) {
      if (rows.get(i).neededForSpacing() > clamps.count()) {
        checks.add(tooFew(request.joints().get(i), rows.get(i), clamps));
      }
    }
    return checks.refusals();
  }

  /** Why no batch plan was found: too cold while in clamps, or a joint too slow to close. */
  static Refusal unplanned(GlueUpRequest request, List<JointWork> tasks) {
    BatchLimits limits = BatchLimits.at(request, request.start());
    for (JointWork task : tasks) {
      if (BatchBuilder.EMPTY.with(task).orderWithin(limits).isEmpty()) {
        return tooSlow(task, limits);
      }
    }
    double clamped = Milestones.clampSeconds(request, request.start()).orElse(86_400);
    double coldest = AirExtremes.coldestCelsius(request.climate(), request.start(), clamped);
    return cold(request, Math.min(coldest, request.climate().lowestCelsius()));
  }

  private static Refusal cold(GlueUpRequest request, double celsius) {
    double minimum = request.adhesive().air().minimumTemperature().high();
    Quantity least = Quantity.of(minimum, Unit.CELSIUS);
    List<Message> ways = GlueWays.of(request);
    return new Refusal(
        "climate",
        Message.of(
            "At {0} this adhesive does not bond: its least is {1}, from the first glue until the"
                + " clamps come off. Colder, it dries to chalk or never cures, and no length of"
                + " clamping mends it.",
            Quantity.of(celsius, Unit.CELSIUS), least),
        ways.isEmpty()
            ? Message.of(
                "Heat room, wood and adhesive to at least {0} and hold it until the clamps come"
                    + " off, or use an adhesive made for the cold.",
                least)
            : Message.either(ways));
  }

  private static Refusal hot(double celsius, double maximum) {
    return new Refusal(
        "climate",
        Message.of(
            "At {0} this adhesive sets before it has wetted the wood: its most is {1}.",
            Quantity.of(celsius, Unit.CELSIUS), Quantity.of(maximum, Unit.CELSIUS)),
        Message.of(
            "Work in the cool of the morning, or cool room and wood below {0}.",
            Quantity.of(maximum, Unit.CELSIUS)));
  }

  private static Refusal wet(Adhesive adhesive, double percent) {
    SourcedRange most = WoodLimits.most(adhesive);
    return new Refusal(
        "moisturePercents",
        Message.of(
            "Wood at {0} is too wet for this adhesive: its most is {1}, and the wood will shrink"
                + " after.",
            Quantity.of(percent, Unit.PERCENT), Quantity.of(most.high(), Unit.PERCENT)),
        Message.of(
            "Dry it, stacked on stickers, until every part reads {0} or less.",
            Quantity.of(most.low(), Unit.PERCENT)));
  }

  private static void gap(Checks checks, Joint joint, Adhesive adhesive) {
    double most = adhesive.line().maximumGap().low();
    if (joint.gapMetre() > most) {
      checks.add(
          new Refusal(
              "gapMetre",
              Message.of(
                  "The gap of {0} in \""
                      + joint.name()
                      + "\" is more than the {1} this adhesive fills.",
                  Quantity.of(joint.gapMetre(), Unit.METRE),
                  Quantity.of(most, Unit.METRE)),
              Message.of(
                  "Fit the joint closer, glue in a sliver, or use an adhesive that fills gaps.")));
    }
  }

  private static Refusal tooFew(Joint joint, Row row, Clamps clamps) {
    double caul = ClampRows.caulMetre(joint, clamps);
    Message remedy =
        caul > clamps.caulDepthMetre()
            ? Message.of(
                "Borrow clamps, or put a straight caul at least {0} deep between clamps and work,"
                    + " so that each clamp's fan of pressure is wider.",
                Quantity.of(caul, Unit.METRE))
            : Message.of("Borrow clamps, or join shorter parts.");
    return new Refusal(
        "clamps.count",
        Message.of(
            "\"" + row.joint() + "\" takes {0} clamps no more than {1} apart; the shelf has {2}.",
            Quantity.of(row.neededForSpacing(), Unit.COUNT),
            Quantity.of(row.spacingLimitMetre(), Unit.METRE),
            Quantity.of(clamps.count(), Unit.COUNT)),
        remedy);
  }

  private static Refusal tooSlow(JointWork task, BatchLimits limits) {
    return new Refusal(
        "pace",
        Message.of(
            "Even alone, one joint of \""
                + task.joint().name()
                + "\" takes {0} to spread and {1} to clamp; this adhesive gives {2} open and {3}"
                + " closed in this air.",
            Quantity.of(task.spreadSecond(), Unit.SECOND),
            Quantity.of(task.clampSecond(), Unit.SECOND),
            Quantity.of(limits.assembly().openSecond(), Unit.SECOND),
            Quantity.of(limits.assembly().closedSecond(), Unit.SECOND)),
        Message.of(
            "Get another pair of hands, preset every clamp in a dry run, work cooler if the label"
                + " allows, or use a slower adhesive."));
  }
}
