package benchlore.schedules.project;

import benchlore.schedules.answer.Message;
import benchlore.schedules.answer.QuantityKey;
import benchlore.schedules.answer.WorkingLine;
import benchlore.schedules.glueup.GlueUpSchedule;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.quantity.Figure;
import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.time.Moment;
import java.util.List;

/**
 * How long glue water is given to leave a joint before it is planed flat: the whole of the
 * adhesive's wait under a gloss, which shows every sunken line, less under what hides it.
 */
enum JointSettling {
  /** An adhesive without water: it only has to be hard. */
  NO_WATER(1),
  /** The shop's own wait. */
  OWN(1),
  /** A film that mirrors. */
  GLOSSY(1),
  /** A film that does not. */
  SATIN(4.0 / 7),
  /** A matt film, or none: oil, wax. */
  MATT(3.0 / 7);

  private final double share;

  JointSettling(double share) {
    this.share = share;
  }

  static JointSettling of(ProjectRequest request) {
    if (!request.materials().adhesive().waterBased()) {
      return NO_WATER;
    }
    if (request.shop().habits().glueSettlesSecond().isPresent()) {
      return OWN;
    }
    if (request.materials().face().finish().role() != FinishRole.FILM) {
      return MATT;
    }
    return switch (request.materials().face().coats().sheen()) {
      case MATT -> MATT;
      case SATIN -> SATIN;
      case SEMI_GLOSS, GLOSS -> GLOSSY;
    };
  }

  /** From when a joint may be planed flat; never before it may be handled. */
  Moment machineFrom(ProjectRequest request, GlueUpSchedule schedule) {
    Moment tight = schedule.batches().get(0).tight();
    Moment rule = schedule.machine().at();
    double seconds =
        this == OWN
            ? request.shop().habits().glueSettlesSecond().orElse(0)
            : Math.ceil(tight.secondsUntil(rule) * share);
    return share == 1 && this != OWN
        ? rule
        : schedule.handle().at().orLater(tight.plusSeconds(seconds));
  }

  /** Whether a warning of joints that sink under gloss is dealt with. */
  boolean isShortened() {
    return this == SATIN || this == MATT;
  }

  /** Why they wait, and what else would do. */
  List<Message> words() {
    String water = "Glue water swells the wood at a joint. Planed flat now, the joint sinks later";
    String skim = " Or rough it out tomorrow and skim it last, next week.";
    return switch (this) {
      case NO_WATER ->
          List.of(
              Message.of(
                  "This adhesive brings no water, so nothing sinks; it only has to be hard before a"
                      + " cutter meets it."));
      case OWN -> List.of(Message.of(water + "; this is your own wait."));
      case GLOSSY -> List.of(Message.of(water + " and shows in a gloss." + skim));
      case SATIN ->
          List.of(
              Message.of(water + "; under satin it need not wait as long as under gloss." + skim));
      case MATT ->
          List.of(
              Message.of(
                  water + "; under oil or matt less than half of what gloss asks does." + skim));
    };
  }

  /** How the wait came about; nothing where the adhesive's own stands. */
  List<WorkingLine> working() {
    if (!isShortened()) {
      return List.of();
    }
    Provenance from =
        Provenance.fromMemory(
            "of a week under gloss, two or three days under oil or matt, four under satin");
    SourcedRange part = SourcedRange.of(share, Unit.RATIO, from);
    return List.of(
        new WorkingLine(
            QuantityKey.MACHINE_AFTER,
            Figure.computed("share of the wait for glue water", share, Unit.RATIO),
            "wait = the adhesive's wait before machining x share by sheen",
            List.of(Figure.of("share", part.mid(), part.unit(), from)),
            from));
  }
}
