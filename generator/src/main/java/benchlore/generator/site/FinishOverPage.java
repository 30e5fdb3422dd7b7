package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.planning.FinishOver;
import benchlore.generator.units.Display;
import benchlore.schedules.coating.OverRule;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** What may go over each finish, for a page of its own and for the finish's page. */
final class FinishOverPage {
  static final String URL = "tables/finish-over-finish.html";
  private static final String ROOT = "../";

  private final Library library;
  private final FinishOver over;

  FinishOverPage(Library library, List<OverRule> rules) {
    this.library = library;
    this.over = new FinishOver(library, rules);
  }

  /** Values for the template {@code finish-over-finish}. */
  Map<String, Object> values() {
    List<Map<String, Object>> under = new ArrayList<>();
    for (LibraryRecord finish : library.of(Kind.FINISHES)) {
      under.add(Map.of("entry", finish, "groups", groups(finish)));
    }
    Map<String, Object> values = new HashMap<>();
    values.put("root", ROOT);
    values.put("under", under);
    return values;
  }

  /** The finishes over one, grouped by verdict and reason, so that a reason is read once. */
  private List<Map<String, Object>> groups(LibraryRecord under) {
    Map<String, List<FinishOver.Pair>> byReason = new java.util.LinkedHashMap<>();
    for (OverRule.Verdict verdict : OverRule.Verdict.values()) {
      for (FinishOver.Pair pair : over.over(under)) {
        if (pair.verdict().holds() == verdict) {
          String reason = verdict + String.join(" ", pair.verdict().why()) + wait(pair);
          byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(pair);
        }
      }
    }
    return byReason.values().stream().map(FinishOverPage::group).toList();
  }

  private static Map<String, Object> group(List<FinishOver.Pair> pairs) {
    FinishOver.Pair first = pairs.get(0);
    return Map.of(
        "verdict", first.verdict().holds().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        "words", words(first),
        "wait", wait(first),
        "why", String.join(" ", first.verdict().why()),
        "uppers", pairs.stream().map(FinishOver.Pair::upper).toList());
  }

  private static String words(FinishOver.Pair pair) {
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

  private static String wait(FinishOver.Pair pair) {
    return pair.verdict()
        .from()
        .map(from -> pair.start().secondsUntil(from))
        .map(seconds -> "after " + Display.html(Quantity.of(seconds, Unit.SECOND)))
        .orElse("");
  }
}
