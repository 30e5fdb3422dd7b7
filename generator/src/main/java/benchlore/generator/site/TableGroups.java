package benchlore.generator.site;

import benchlore.generator.compatibility.Table;
import benchlore.generator.compatibility.TableItem;
import benchlore.schedules.compatibility.Verdict;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The things of one verdict, told so that no reason is read twice: what nearly all of them share
 * first, with the exceptions named, then groups that have the rest in common.
 *
 * @param shared reasons most of them share
 * @param groups the others, largest first
 */
record TableGroups(List<Shared> shared, List<Group> groups) {
  /**
   * A reason of nearly all.
   *
   * @param reason the reason
   * @param but whom it does not concern
   */
  record Shared(Table.Reason reason, List<TableItem> but) {}

  /**
   * Things with the same reasons besides the shared ones.
   *
   * @param reasons those; empty where the shared ones are all
   * @param things which
   */
  record Group(List<Table.Reason> reasons, List<TableItem> things) {}

  private static final int FEWEST_TO_SHARE = 4;
  private static final int MOST_EXCEPTIONS = 3;

  /**
   * Groups cells of one verdict.
   *
   * @param cells by thing, in the order to list them
   * @param above reasons the reader has been given already
   */
  static TableGroups of(Map<TableItem, Table.Cell> cells, List<Table.Reason> above) {
    Map<TableItem, List<Table.Reason>> told = new LinkedHashMap<>();
    cells.forEach((thing, cell) -> told.put(thing, told(cell, above)));
    List<Shared> shared = shared(told);
    Map<List<Table.Reason>, List<TableItem>> groups = new LinkedHashMap<>();
    told.forEach(
        (thing, reasons) -> {
          List<Table.Reason> rest = new ArrayList<>(reasons);
          shared.forEach(s -> rest.remove(s.reason()));
          groups.computeIfAbsent(rest, r -> new ArrayList<>()).add(thing);
        });
    List<Group> list = new ArrayList<>();
    groups.forEach((reasons, things) -> list.add(new Group(reasons, things)));
    list.sort((a, b) -> b.things().size() - a.things().size());
    return new TableGroups(shared, list);
  }

  /** Against a "no", nothing that speaks for it; a cell keeps a reason though it was told above. */
  private static List<Table.Reason> told(Table.Cell cell, List<Table.Reason> above) {
    List<Table.Reason> all = new ArrayList<>(cell.reasons());
    if (cell.verdict() == Verdict.NO) {
      all.removeIf(reason -> reason.verdict() == Verdict.GOOD);
    }
    List<Table.Reason> own = new ArrayList<>(all);
    own.removeAll(above);
    return own.isEmpty() ? all : own;
  }

  private static List<Shared> shared(Map<TableItem, List<Table.Reason>> told) {
    Map<Table.Reason, Integer> counts = new LinkedHashMap<>();
    told.values().forEach(all -> all.forEach(reason -> counts.merge(reason, 1, Integer::sum)));
    int least = Math.max(FEWEST_TO_SHARE, told.size() - MOST_EXCEPTIONS);
    List<Shared> shared = new ArrayList<>();
    counts.forEach(
        (reason, count) -> {
          if (count >= least) {
            shared.add(new Shared(reason, without(reason, told)));
          }
        });
    return shared;
  }

  private static List<TableItem> without(
      Table.Reason reason, Map<TableItem, List<Table.Reason>> told) {
    return told.entrySet().stream()
        .filter(entry -> !entry.getValue().contains(reason))
        .map(Map.Entry::getKey)
        .toList();
  }
}
