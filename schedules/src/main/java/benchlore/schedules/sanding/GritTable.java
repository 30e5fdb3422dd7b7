package benchlore.schedules.sanding;

import benchlore.schedules.quantity.Provenance;
import java.util.List;

/**
 * Grain sizes, one grade a row, coarse first; each scale strictly falling.
 *
 * <p>Published charts disagree a little (P2500 8 or 8.4, CAMI 24 708 or 715, CAMI 1000 9.2 or
 * 10.3). One seen row is kept for each grade, never an average; a recalled figure stands only where
 * no chart was seen. P150 to P2000 are published rounded to whole micrometres.
 */
final class GritTable {
  private static final Provenance UNITS_PAGE =
      Provenance.source(
          "Coated abrasives page of a units-of-measure reference",
          "CAMI and FEPA P average particle sizes");
  private static final Provenance CHART =
      Provenance.source(
          "Finish-supplier grit comparison chart", "micron column, rounded to whole micrometres");
  private static final Provenance ARTICLE =
      Provenance.source("General-reference article on sandpaper numbering", "grit size table");
  private static final Provenance RANGE_PAGE =
      Provenance.source("Encyclopaedic page on sandpaper grit charts", "range end points");
  private static final Provenance RECALLED =
      Provenance.fromMemory("ANSI B74.18 average grain size");

  /** FEPA P grades, coarse first. */
  static final List<Grit> FEPA_P =
      List.of(
          p(12, 1815, UNITS_PAGE),
          p(16, 1324, UNITS_PAGE),
          p(20, 1000, UNITS_PAGE),
          p(24, 764, UNITS_PAGE),
          p(30, 642, UNITS_PAGE),
          p(36, 538, UNITS_PAGE),
          p(40, 425, UNITS_PAGE),
          p(50, 336, UNITS_PAGE),
          p(60, 269, UNITS_PAGE),
          p(80, 201, UNITS_PAGE),
          p(100, 162, UNITS_PAGE),
          p(120, 125, UNITS_PAGE),
          p(150, 100, CHART),
          p(180, 82, CHART),
          p(220, 68, CHART),
          p(240, 60, CHART),
          p(280, 52, CHART),
          p(320, 46, CHART),
          p(360, 40, CHART),
          p(400, 35, CHART),
          p(500, 30, CHART),
          p(600, 26, CHART),
          p(800, 22, CHART),
          p(1000, 18, CHART),
          p(1200, 15, CHART),
          p(1500, 13, CHART),
          p(2000, 10, CHART),
          p(2500, 8.4, RANGE_PAGE));

  /** CAMI grades, coarse first. */
  static final List<Grit> CAMI =
      List.of(
          cami(16, 1320, UNITS_PAGE),
          cami(20, 905, UNITS_PAGE),
          cami(24, 715, UNITS_PAGE),
          cami(30, 638, UNITS_PAGE),
          cami(36, 535, UNITS_PAGE),
          cami(40, 428, UNITS_PAGE),
          cami(50, 351, UNITS_PAGE),
          cami(60, 268, UNITS_PAGE),
          cami(80, 192, UNITS_PAGE),
          cami(100, 141, UNITS_PAGE),
          cami(120, 116, ARTICLE),
          cami(150, 93, CHART),
          cami(180, 82, CHART),
          cami(220, 68, CHART),
          cami(240, 52, CHART),
          cami(280, 42, CHART),
          cami(320, 35, CHART),
          cami(360, 28, CHART),
          cami(400, 22, CHART),
          cami(500, 18, CHART),
          cami(600, 15, CHART),
          cami(800, 12.2, RECALLED),
          cami(1000, 10.3, RANGE_PAGE));

  private GritTable() {}

  private static Grit p(int number, double micron, Provenance from) {
    return new Grit(GritSystem.FEPA_P, number, micron, from);
  }

  private static Grit cami(int number, double micron, Provenance from) {
    return new Grit(GritSystem.CAMI, number, micron, from);
  }
}
