package benchlore.schedules.glueup;

import benchlore.schedules.glueup.GlueUpRequest.Clamps;
import benchlore.schedules.glueup.GlueUpRequest.Joint;
import benchlore.schedules.glueup.GlueUpSchedule.Batch;
import benchlore.schedules.glueup.GlueUpSchedule.Pressure;
import benchlore.schedules.glueup.GlueUpSchedule.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How many clamps each row gets: as many as the pressure asks and the shelf holds, or fewer where
 * the adhesive would not wait for so many. The spacing is never given up, since a joint pressed
 * unevenly fails; pressure short of the book's is told.
 *
 * @param rows the clamps of each group
 * @param batches the best split with them
 */
record ClampChoice(List<Row> rows, List<Batch> batches) {
  /** Rows with no more clamps each than this, unless their spacing calls for more. */
  static List<Row> rows(GlueUpRequest request, Pressure pressure, int most) {
    Clamps shelf = request.clamps();
    int each = Math.min(most, shelf.count());
    Clamps clamps =
        new Clamps(each, shelf.forceNewton(), shelf.caulDepthMetre(), shelf.headMetre());
    List<Row> rows = new ArrayList<>();
    for (Joint joint : request.joints()) {
      boolean clamped = ClampRows.needed(request.adhesive(), joint);
      rows.add(ClampRows.row(joint, clamps, pressure, clamped));
    }
    return rows;
  }

  /** The choice whose clamps come off first; empty if not even the fewest clamps close in time. */
  static Optional<ClampChoice> best(GlueUpRequest request, Pressure pressure) {
    Optional<ClampChoice> best = Optional.empty();
    List<Row> rows = rows(request, pressure, request.clamps().count());
    boolean isFewest = false;
    while (!isFewest && !best.map(ClampChoice::inOneGo).orElse(false)) {
      best = better(best, of(request, rows));
      isFewest = isFewest(rows);
      rows = isFewest ? rows : rows(request, pressure, longest(rows) - 1);
    }
    return best;
  }

  private static Optional<ClampChoice> of(GlueUpRequest request, List<Row> rows) {
    List<JointWork> tasks = GlueUp.tasks(request, rows, request.pace().people());
    return new Batches(request, tasks).best().map(found -> new ClampChoice(rows, found));
  }

  private static Optional<ClampChoice> better(
      Optional<ClampChoice> one, Optional<ClampChoice> other) {
    Optional<List<Batch>> first = one.map(ClampChoice::batches);
    Optional<List<Batch>> better = Batches.better(first, other.map(ClampChoice::batches));
    return better.equals(first) ? one : other;
  }

  private boolean inOneGo() {
    return batches.size() == 1;
  }

  private static boolean isFewest(List<Row> rows) {
    for (Row row : rows) {
      if (row.count() > row.neededForSpacing()) {
        return false;
      }
    }
    return true;
  }

  /** Clamps of the longest row that can spare one. */
  private static int longest(List<Row> rows) {
    int most = 0;
    for (Row row : rows) {
      most = row.count() > row.neededForSpacing() ? Math.max(most, row.count()) : most;
    }
    return most;
  }
}
