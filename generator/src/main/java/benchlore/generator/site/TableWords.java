package benchlore.generator.site;

import benchlore.generator.compatibility.TableKind;
import benchlore.schedules.compatibility.Verdict;
import java.util.Locale;

/**
 * What the pages of a compatibility table are called.
 *
 * @param title of the page one looks up by row
 * @param lead what to do there
 * @param turnedTitle of the page the other way round
 * @param turnedLead what to do there
 * @param rowLink link to it from the page of a row's record; empty where rows are no records
 * @param columnLink link to the turned page from the page of a column's record
 */
record TableWords(
    String title,
    String lead,
    String turnedTitle,
    String turnedLead,
    String rowLink,
    String columnLink) {

  static TableWords of(TableKind kind) {
    return switch (kind) {
      case ADHESIVE_BY_SPECIES ->
          new TableWords(
              "Which glue for which wood",
              "Open your wood. Under it stand the glues, each with its reasons. The label wins, and"
                  + " a trial joint broken on purpose settles it.",
              "Which wood for which glue",
              "Open the glue you have. Under it stand the woods, each with its reasons.",
              "Glue for it",
              "Woods it holds");
      case ADHESIVE_BY_USE ->
          new TableWords(
              "Which glue for which use",
              "Open what the piece must stand. Under it stand the glues, each with its reasons. The"
                  + " label wins.",
              "What each glue stands",
              "Open the glue you have. Under it stand the uses, each with its reasons.",
              "",
              "What it stands");
      case FINISH_BY_PLACE ->
          new TableWords(
              "Which finish for which place",
              "Open where the piece will live. Under it stand the finishes, each with its reasons."
                  + " The label wins.",
              "Where each finish lasts",
              "Open the finish you have. Under it stand the places, each with its reasons.",
              "",
              "Where it lasts");
      case BIT_BY_JOB ->
          new TableWords(
              "Which router bit for which job",
              "Open your job. Under it stand the bits: the best, those that work with something to"
                  + " mind, and why the rest are not for it.",
              "What each router bit does",
              "Open the bit you have. Under it stand the jobs, each with its reasons.",
              "",
              "Jobs for it");
    };
  }

  /** A mark that needs no colour. */
  static String symbol(Verdict verdict) {
    return switch (verdict) {
      case GOOD -> "\u2713";
      case CARE -> "!";
      case UNKNOWN -> "?";
      case NO -> "\u2715";
    };
  }

  /** Name of a verdict in style sheets. */
  static String css(Verdict verdict) {
    return verdict.name().toLowerCase(Locale.ROOT);
  }

  /** A word short enough for a cell. */
  static String brief(TableKind kind, Verdict verdict) {
    String word = kind.word(verdict).toLowerCase(Locale.ROOT);
    return switch (verdict) {
      case GOOD -> word;
      case CARE -> word.replace("with ", "");
      case UNKNOWN -> "unknown";
      case NO -> "no";
    };
  }
}
