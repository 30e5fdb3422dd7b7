package benchlore.generator.site;

import benchlore.generator.compatibility.FinishOverTable;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.page.FinishOverFinishModel;
import benchlore.generator.planning.EngineData;
import benchlore.generator.units.Display;
import benchlore.schedules.compatibility.OverReason;
import benchlore.schedules.compatibility.Rules;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Fills the page of what may go over each finish. */
final class FinishOverPage {
  private final Library library;
  private final FinishOverTable over;

  FinishOverPage(Library library, Rules<OverReason> rules) {
    this.library = library;
    Map<LibraryRecord, Finish> finishes = new LinkedHashMap<>();
    for (LibraryRecord finish : library.of(Kind.FINISHES)) {
      EngineData.finish(finish).ifPresent(data -> finishes.put(finish, data));
    }
    this.over = new FinishOverTable(finishes, rules);
  }

  FinishOverFinishModel model() {
    return new FinishOverFinishModel(
        library.of(Kind.FINISHES).stream()
            .map(finish -> new FinishOverFinishModel.Under(finish, groups(finish)))
            .toList());
  }

  /** The finishes over one, grouped by verdict and reason, so that a reason is read once. */
  private List<FinishOverFinishModel.Group> groups(LibraryRecord under) {
    Map<String, List<FinishOverTable.Pair>> byReason = new LinkedHashMap<>();
    for (OverReason.Holds verdict : OverReason.Holds.values()) {
      for (FinishOverTable.Pair pair : over.over(under)) {
        if (pair.verdict().holds() == verdict) {
          String reason = verdict + String.join(" ", pair.verdict().why()) + wait(pair);
          byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(pair);
        }
      }
    }
    return byReason.values().stream().map(FinishOverPage::group).toList();
  }

  private static FinishOverFinishModel.Group group(List<FinishOverTable.Pair> pairs) {
    FinishOverTable.Pair first = pairs.get(0);
    return new FinishOverFinishModel.Group(
        first.verdict().holds().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        words(first),
        wait(first),
        String.join(" ", first.verdict().why()),
        pairs.stream().map(FinishOverTable.Pair::upper).toList());
  }

  private static String words(FinishOverTable.Pair pair) {
    return switch (pair.verdict().holds()) {
      case YES -> "Holds";
      case SCUFFED -> "Holds if scuffed dull";
      case WITH_BARRIER -> "Only with " + barrier(pair.verdict().barrier()) + " between";
      case NO -> "Does not hold";
    };
  }

  private static String barrier(List<FinishFamily> families) {
    return String.join(", then ", families.stream().map(FinishOverPage::spoken).toList());
  }

  private static String spoken(FinishFamily family) {
    return family == FinishFamily.SHELLAC
        ? "dewaxed shellac"
        : family.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String wait(FinishOverTable.Pair pair) {
    return pair.verdict()
        .from()
        .map(from -> pair.start().secondsUntil(from))
        .map(seconds -> "after " + Display.html(Quantity.of(seconds, Unit.SECOND)))
        .orElse("");
  }
}
