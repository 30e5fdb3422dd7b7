package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Refusal;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.time.Bookings;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import benchlore.schedules.time.ShopWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A plan being laid out: the steps so far, what to buy, what is in the way, and the moment from
 * which the next step may start. Made and used in one call of {@link Project#plan}.
 */
final class PlanBuilder {
  private final Bookings bookings;
  private final List<Step> steps = new ArrayList<>();
  private final List<Purchase> shopping = new ArrayList<>();
  private final List<Refusal> refusals = new ArrayList<>();
  private final List<StepId> warned = new ArrayList<>();
  private final List<Caution> warnings = new ArrayList<>();
  private final Progress progress;
  private Moment ready;

  PlanBuilder(ShopWeek week, Moment start, Progress progress) {
    this.bookings = new Bookings(week);
    this.progress = progress;
    this.ready = start;
  }

  Moment ready() {
    return ready;
  }

  /** Nothing later starts before this moment. */
  void readyFrom(Moment moment) {
    ready = ready.orLater(moment);
  }

  void add(Step step) {
    steps.add(step);
  }

  /** Seconds a moment lies before another; 0 if it does not. */
  static double early(Moment moment, Moment due) {
    return Math.max(0, moment.secondsUntil(due));
  }

  /** Adds a caution to the step of this name, laid already or yet to be. */
  void warn(StepId step, Caution caution) {
    warned.add(step);
    warnings.add(caution);
  }

  void buy(Purchase purchase) {
    shopping.add(purchase);
  }

  void refuse(List<Refusal> reasons) {
    refusals.addAll(reasons);
  }

  boolean refused() {
    return !refusals.isEmpty();
  }

  List<Refusal> refusals() {
    return List.copyOf(refusals);
  }

  List<Purchase> shopping() {
    return List.copyOf(shopping);
  }

  /** The steps in order of their start; steps that start together stay in the order laid. */
  List<Step> steps() {
    List<Step> ordered = new ArrayList<>();
    for (Step step : steps) {
      Step told = step;
      for (int i = 0; i < warned.size(); i++) {
        told = warned.get(i).equals(step.id()) ? told.with(warnings.get(i)) : told;
      }
      ordered.add(told);
    }
    ordered.sort((a, b) -> a.start().compareTo(b.start()));
    return toldOnce(ordered);
  }

  /** A caution stands in full at the first step it is true of, later by its name. */
  private static List<Step> toldOnce(List<Step> ordered) {
    List<Step> steps = new ArrayList<>();
    List<Caution> told = new ArrayList<>();
    for (Step step : ordered) {
      List<Caution> cautions = new ArrayList<>();
      for (Caution caution : step.cautions()) {
        cautions.add(told(caution, told) ? caution.toldBefore() : caution);
      }
      told.addAll(step.cautions());
      steps.add(step.with(cautions));
    }
    return steps;
  }

  /** Whether it has been told; of what may spoil the work, the figures may be new. */
  private static boolean told(Caution caution, List<Caution> before) {
    for (Caution other : before) {
      if (other.code().equals(caution.code())
          && (caution.severity() != Caution.Severity.WORK || other.what().equals(caution.what()))) {
        return true;
      }
    }
    return false;
  }

  /**
   * Books work from the ready moment on, in as many pieces as the hours make it, and moves the
   * ready moment to its end. Work that is done keeps the time it was done at.
   *
   * @param step which step
   * @param what the work in a few words, for a refusal
   * @return the pieces; empty, with a refusal noted, if the calendar does not hold it
   */
  List<Interval> book(StepId step, String what, double seconds) {
    List<Interval> done = progress.slots(step);
    if (!done.isEmpty()) {
      double early = early(done.get(0).start(), ready);
      if (early > 0) {
        warn(step, step.is(StepId.Task.MACHINE) ? TooEarly.joint(early) : TooEarly.work(early));
      }
      readyFrom(done.get(done.size() - 1).end());
      return done;
    }
    List<Interval> slots = bookings.pieces(progress.notBefore(ready), seconds);
    if (slots.isEmpty()) {
      noHours(what);
      return slots;
    }
    slots.forEach(bookings::take);
    readyFrom(slots.get(slots.size() - 1).end());
    return slots;
  }

  /** The first free stretch from a moment on that holds this without a break; not yet booked. */
  Optional<Interval> unbroken(String what, Moment from, double seconds) {
    Optional<Interval> slot = bookings.unbroken(progress.notBefore(from), seconds);
    if (slot.isEmpty()) {
      noHours(what);
    }
    return slot;
  }

  /** Books a stretch found before. */
  void take(Interval slot) {
    bookings.take(slot);
  }

  private void noHours(String what) {
    refusals.add(
        Refusal.of(
            "shop.week",
            "The shop's hours never hold: " + what + ".",
            "Give longer hours on at least one day, or split the work."));
  }
}
