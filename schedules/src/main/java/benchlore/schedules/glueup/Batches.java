package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpSchedule.Batch;
import benchlore.schedules.glueup.GlueUpSchedule.Order;
import benchlore.schedules.glueup.GlueUpSchedule.Share;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.quantity.Numeric;
import benchlore.schedules.room.EquivalentAge;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Splits an assembly into batches that each close in time.
 *
 * <p>Joints stay in the order given. A batch takes joints as long as it closes within the open,
 * closed and pot time of its own hour and finds clamps. Every number of clamps from the longest row
 * to the shelf is tried, each with and without starting a batch while an earlier one still stands
 * in clamps; the plan whose clamps come off first wins, then the one with fewest batches. Trying
 * the smaller numbers too makes it certain that more clamps are never slower.
 */
final class Batches {
  private static final int COLD_HOURS = 24;

  private final GlueUpRequest request;
  private final List<JointWork> tasks;
  private final EquivalentAge.Rate setting;
  // Most plans tried begin their batches at the same moments.
  private final List<Known> limits = new ArrayList<>();

  private record Known(Moment start, BatchLimits limits) {}

  Batches(GlueUpRequest request, List<JointWork> tasks) {
    this.request = request;
    this.tasks = List.copyOf(tasks);
    this.setting = SettingRates.setting(request.adhesive(), request.wood());
  }

  private BatchLimits limitsAt(Moment start) {
    for (Known known : limits) {
      if (known.start().equals(start)) {
        return known.limits();
      }
    }
    BatchLimits found = BatchLimits.at(request, start);
    limits.add(new Known(start, found));
    return found;
  }

  /** The best split; empty if some joint cannot be closed, or not in warm enough air. */
  Optional<List<Batch>> best() {
    int most = 0;
    int row = 1;
    for (JointWork task : tasks) {
      most = most + task.clamps();
      row = Math.max(row, task.clamps());
    }
    int shelf = Math.min(request.clamps().count(), Math.max(1, most));
    Optional<List<Batch>> best = plan(shelf, true);
    for (int limit = shelf; limit >= row && best.map(List::size).orElse(2) > 1; limit--) {
      best = better(best, plan(limit, false));
      best = better(best, plan(limit, true));
    }
    return best;
  }

  /** The one whose clamps come off first, then the one with fewer batches. */
  static Optional<List<Batch>> better(Optional<List<Batch>> one, Optional<List<Batch>> other) {
    if (one.isEmpty() || other.isEmpty()) {
      return one.isPresent() ? one : other;
    }
    int order = last(other.get()).compareTo(last(one.get()));
    boolean fewer = other.get().size() < one.get().size();
    return order < 0 || (order == 0 && fewer) ? other : one;
  }

  /** When the last clamps of a plan come off. */
  static Moment last(List<Batch> batches) {
    Moment last = batches.get(0).clampsOff();
    for (Batch batch : batches) {
      last = batch.clampsOff().isAfter(last) ? batch.clampsOff() : last;
    }
    return last;
  }

  private Optional<List<Batch>> plan(int limit, boolean overlapping) {
    List<Batch> done = new ArrayList<>();
    List<BatchBuilder> drafts = new ArrayList<>();
    int next = 0;
    while (next < tasks.size()) {
      Moment free = free(done, drafts, tasks.get(next), limit, overlapping);
      int used = inUse(done, drafts, free);
      Optional<Batch> batch = Optional.empty();
      for (int hour = 0; hour <= COLD_HOURS && batch.isEmpty(); hour++) {
        Moment start = free.plusHours(hour);
        BatchBuilder draft = fill(next, start, limit - used);
        batch = draft.tasks().isEmpty() ? batch : batch(draft, start);
        if (batch.isPresent()) {
          drafts.add(draft);
          next = next + draft.tasks().size();
        } else if (done.isEmpty()) {
          return Optional.empty();
        }
      }
      if (batch.isEmpty()) {
        return Optional.empty();
      }
      done.add(batch.get());
    }
    return Optional.of(done);
  }

  /** The first moment at which hands and enough clamps are free for this joint. */
  private Moment free(
      List<Batch> done, List<BatchBuilder> drafts, JointWork task, int limit, boolean overlapping) {
    Moment free = request.start();
    if (done.isEmpty()) {
      return free;
    }
    free = done.get(done.size() - 1).tight();
    for (int i = 0; i < done.size(); i++) {
      boolean samePanel = task.inLine() && drafts.get(i).holds(task.group());
      if (!overlapping || samePanel) {
        free = free.orLater(done.get(i).clampsOff());
      }
    }
    while (inUse(done, drafts, free) + task.clamps() > limit) {
      free = nextOff(done, free);
    }
    return free;
  }

  private static Moment nextOff(List<Batch> done, Moment after) {
    Moment next = last(done);
    for (Batch batch : done) {
      if (batch.clampsOff().isAfter(after) && batch.clampsOff().isBefore(next)) {
        next = batch.clampsOff();
      }
    }
    return next;
  }

  private static int inUse(List<Batch> done, List<BatchBuilder> drafts, Moment at) {
    int used = 0;
    for (int i = 0; i < done.size(); i++) {
      used = used + (done.get(i).clampsOff().isAfter(at) ? drafts.get(i).clamps() : 0);
    }
    return used;
  }

  private BatchBuilder fill(int next, Moment start, int clampsLeft) {
    BatchLimits within = limitsAt(start);
    BatchBuilder draft = BatchBuilder.EMPTY;
    for (int i = next; i < tasks.size(); i++) {
      BatchBuilder more = draft.with(tasks.get(i));
      if (more.clamps() > clampsLeft || more.orderWithin(within).isEmpty()) {
        return draft;
      }
      draft = more;
    }
    return draft;
  }

  private Optional<Batch> batch(BatchBuilder draft, Moment start) {
    BatchLimits within = limitsAt(start);
    double wait = within.assembly().waitSecond();
    double touching = wait + draft.spreadSecond();
    int untilTight = Numeric.ceil(touching + draft.clampSecond());
    Moment tight = start.plusSeconds(untilTight);
    Adhesive adhesive = request.adhesive();
    if (tooHot(start, untilTight)) {
      return Optional.empty();
    }
    OptionalDouble clamped =
        EquivalentAge.secondsUntil(
            request.climate(), tight, adhesive.times().clampTime().high(), setting);
    if (clamped.isEmpty()) {
      return Optional.empty();
    }
    int until = Numeric.ceil(clamped.getAsDouble());
    double coldest =
        AirExtremes.coldestCelsius(request.climate(), start, untilTight + (double) until);
    if (coldest < adhesive.air().minimumTemperature().high()) {
      return Optional.empty();
    }
    Order order = draft.orderWithin(within).orElseThrow();
    return Optional.of(
        new Batch(
            shares(draft),
            order,
            draft.clamps(),
            draft.massKilogram(adhesive),
            start,
            draft.spreadSecond(),
            draft.clampSecond(),
            tight,
            tight.plusSeconds(until)));
  }

  /** Whether the air passes the adhesive's most before the joint is pressed. */
  private boolean tooHot(Moment start, double untilTight) {
    double celsius = AirExtremes.warmestCelsius(request.climate(), start, untilTight);
    return request
        .adhesive()
        .air()
        .maximumTemperature()
        .map(most -> celsius > most.low())
        .orElse(false);
  }

  private static List<Share> shares(BatchBuilder draft) {
    List<Share> shares = new ArrayList<>();
    int group = -1;
    for (JointWork task : draft.tasks()) {
      int last = shares.size() - 1;
      if (task.group() == group) {
        Share share = shares.remove(last);
        shares.add(new Share(share.joint(), share.count() + 1));
      } else {
        shares.add(new Share(task.joint().name(), 1));
        group = task.group();
      }
    }
    return shares;
  }
}
