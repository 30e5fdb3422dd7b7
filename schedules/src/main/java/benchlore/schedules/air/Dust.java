package benchlore.schedules.air;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Checks;
import benchlore.schedules.caution.AirRows;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Sanding dust in a room: mass, capture, concentration against the lowest limit for wood dust.
 *
 * <pre>
 * airborne = removed x (1 - captured share) x airborne share
 * V dc/dt = airborne / time - (Q / K) c, solved exactly, as for vapour
 * </pre>
 *
 * <p>Dust that settles out of the air later is not taken off, which errs to the safe side. The
 * share that stays airborne is the weakest figure: published sanding dust has a median size of 9 to
 * 10 micrometres and hangs for minutes, but most of the mass never leaves the work. Within a factor
 * of five at best; a limit missed by little is a limit missed.
 */
public final class Dust {
  /** Share of uncaught dust that stays airborne where none is given; believed right. */
  static final double AIRBORNE_SHARE = 0.1;

  // A tenth of the leanest wood-dust cloud that explodes, some 30 g/m3; from memory.
  private static final double EXPLOSIBLE_TENTH = 0.003;

  private Dust() {}

  /**
   * Plans the air while sanding.
   *
   * <p>Refused: numbers outside the ranges of the request; an old coat that was not tested for
   * lead; a cloud near what can explode.
   *
   * @param request room, dust and capture
   * @return where the dust goes, the air against its limit, the flow and respirator needed
   */
  public static Answer<DustSchedule> plan(DustRequest request) {
    Objects.requireNonNull(request, "request");
    Checks checks = checks(request);
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    DustSchedule schedule = schedule(request);
    checks.require(
        schedule.peakKilogramPerCubicMetre() < EXPLOSIBLE_TENTH,
        "removedKilogram",
        "The dust in the air would come near what can explode.",
        "Catch the dust with a vacuum at the sander, or plane or scrape instead.");
    if (!checks.isValid()) {
      return Answer.refuse(checks.refusals());
    }
    return Answer.of(schedule, DustWorking.of(request, schedule), cautions(request, schedule));
  }

  private static Checks checks(DustRequest request) {
    Checks checks = new Checks();
    AirChecks.room(request.room(), checks);
    double share = request.airborneShare().orElse(AIRBORNE_SHARE);
    return checks
        .within("removedKilogram", request.removedKilogram(), 1e-6, 100, Unit.KILOGRAM)
        .within("sandingSecond", request.sandingSecond(), 1, 86_400, Unit.SECOND)
        .within("airborneShare", share, 0, 1, Unit.RATIO)
        .require(
            request.source() != DustSource.OLD_COAT_UNTESTED,
            "source",
            "An old coat may hold lead, and its dust harms children most.",
            "Have it tested by a laboratory first; if it holds lead, a certified lead renovator"
                + " takes it off, and nobody sands it dry.");
  }

  private static DustSchedule schedule(DustRequest request) {
    double captured = request.removedKilogram() * request.capture().share().low();
    double loose = request.removedKilogram() - captured;
    double airborne = loose * request.airborneShare().orElse(AIRBORNE_SHARE);
    MixedRoom room = MixedRoom.of(request.room());
    double end = request.sandingSecond();
    Emission emission = new Emission(0, airborne, new ReleaseCurve(1, end, 1));
    double peak = room.concentration(emission, end);
    double average = room.dose(emission, FlowNeeded.EIGHT_HOURS) / FlowNeeded.EIGHT_HOURS;
    DustLimit limit = DustLimit.governing(request.source());
    double level = limit.kilogramPerCubicMetre();
    double inEight = emission.releasedKilogram(FlowNeeded.EIGHT_HOURS);
    return new DustSchedule(
        captured,
        loose - airborne,
        airborne,
        peak,
        average,
        limit,
        peak / level,
        average / level,
        inEight * request.room().mixingFactor() / FlowNeeded.EIGHT_HOURS / level,
        clear(peak / level, room),
        RespiratorChoice.dust(worst(average, peak) / level));
  }

  /** The greater of the 8-hour average and what short spells count for, in the same unit. */
  static double worst(double average, double peak) {
    return Math.max(average, peak / LimitScale.EXCURSION);
  }

  private static OptionalDouble clear(double peakIndex, MixedRoom room) {
    if (peakIndex <= 1) {
      return OptionalDouble.of(0);
    }
    double second = Numeric.log(peakIndex) / room.changesPerSecond();
    return second <= ReEntrySearch.LONGEST_SECOND
        ? OptionalDouble.of(second)
        : OptionalDouble.empty();
  }

  private static List<Caution> cautions(DustRequest request, DustSchedule schedule) {
    List<Caution> cautions = new ArrayList<>();
    double most = Respirator.DUST_FULL_FACE.protectionFactor().orElseThrow();
    if (worst(schedule.eightHourIndex(), schedule.peakIndex()) > most) {
      cautions.add(AirRows.DUST_BEYOND_MASK.caution());
    }
    if (request.capture() == DustCapture.NONE) {
      cautions.add(AirRows.DUST_NOT_CAPTURED.caution());
    }
    if (request.source() == DustSource.SENSITISING_WOOD) {
      cautions.add(AirRows.SENSITISING_WOOD.caution());
    }
    if (request.source() == DustSource.OIL_FILM) {
      cautions.add(ShopRows.FINISH_DUST_FIRE.caution());
    }
    cautions.add(ShopRows.WOOD_DUST.caution());
    cautions.add(AirRows.DUST_FIRE.caution());
    return cautions;
  }
}
