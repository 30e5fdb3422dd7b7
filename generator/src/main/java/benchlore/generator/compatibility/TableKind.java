package benchlore.generator.compatibility;

import benchlore.generator.content.Kind;
import benchlore.schedules.compatibility.Verdict;

/** The compatibility tables: what stands down and across, and what the verdicts are called. */
public enum TableKind {
  /** Which glue holds on which wood. */
  ADHESIVE_BY_SPECIES("adhesive-by-species", "species-by-adhesive", "Good", "With care", "Don't"),
  /** Which glue suits which use of the finished piece. */
  ADHESIVE_BY_USE("adhesive-by-use", "use-by-adhesive", "Good", "With care", "Don't"),
  /** Which finish lasts where. */
  FINISH_BY_PLACE("finish-by-place", "place-by-finish", "Yes", "With care", "No"),
  /** Which router bit does which job. */
  BIT_BY_JOB("bit-by-job", "job-by-bit", "Best", "Works", "Not for it");

  private final String file;
  private final String turned;
  private final String good;
  private final String care;
  private final String no;

  TableKind(String file, String turned, String good, String care, String no) {
    this.file = file;
    this.turned = turned;
    this.good = good;
    this.care = care;
    this.no = no;
  }

  /** Name of its file in the content and of its schema; also of its page. */
  public String file() {
    return file;
  }

  /** Name of the page that lists it the other way round. */
  public String turned() {
    return turned;
  }

  /** What one looks up first: the wood, the place, the job. */
  public Axis row() {
    return switch (this) {
      case ADHESIVE_BY_SPECIES -> Axis.of(Kind.SPECIES, "wood", "species");
      case ADHESIVE_BY_USE -> Axis.described("use", "uses", "use");
      case FINISH_BY_PLACE -> Axis.described("place", "places", "place");
      case BIT_BY_JOB -> Axis.described("job", "jobs", "job");
    };
  }

  /** What is found there: the glue, the finish, the bit. */
  public Axis column() {
    return switch (this) {
      case ADHESIVE_BY_SPECIES, ADHESIVE_BY_USE -> Axis.of(Kind.ADHESIVES, "glue", "adhesive");
      case FINISH_BY_PLACE -> Axis.of(Kind.FINISHES, "coat", "finish");
      case BIT_BY_JOB -> Axis.of(Kind.ROUTER_BITS, "tool", "bit");
    };
  }

  /** What a verdict is called in this table. */
  public String word(Verdict verdict) {
    return switch (verdict) {
      case GOOD -> good;
      case CARE -> care;
      case UNKNOWN -> "Not known";
      case NO -> no;
    };
  }
}
