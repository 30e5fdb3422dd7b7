package benchlore.schedules.compatibility;

/** What a rule says of a pair it applies to. */
public interface Reason {
  /** What this reason alone would give. */
  Verdict verdict();

  /** A plain sentence. */
  String why();
}
