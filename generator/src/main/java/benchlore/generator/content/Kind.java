package benchlore.generator.content;

import java.util.Optional;

/** A kind of record: one folder of {@code content/}, one schema, one list page. */
public enum Kind {
  /** Router-bit types. */
  ROUTER_BITS("router-bits", "Router bits", "router bit"),
  /** Tools, jigs and shop gear. */
  TOOLS("tools", "Tools", "tool"),
  /** Species of wood. */
  SPECIES("species", "Species", "species"),
  /** Finishes and finishing materials. */
  FINISHES("finishes", "Finishes", "finish"),
  /** Levels of sheen, dull to mirror. */
  SHEENS("sheens", "Sheens", "sheen"),
  /** Adhesives. */
  ADHESIVES("adhesives", "Adhesives", "adhesive"),
  /** Abrasives. */
  ABRASIVES("abrasives", "Abrasives", "abrasive"),
  /** Solvents and thinners. */
  SOLVENTS("solvents", "Solvents", "solvent"),
  /** Fasteners, hardware and threads. */
  FASTENERS("fasteners", "Fasteners", "fastener"),
  /** Techniques. */
  TECHNIQUES("techniques", "Techniques", "technique"),
  /** Faults with causes and cures. */
  DEFECTS("defects", "Faults", "fault");

  private final String folder;
  private final String title;
  private final String one;

  Kind(String folder, String title, String one) {
    this.folder = folder;
    this.title = title;
    this.one = one;
  }

  /** Folder under {@code content/}, also the schema's name and the page folder. */
  public String folder() {
    return folder;
  }

  /** Plural heading. */
  public String title() {
    return title;
  }

  /** What one record of it is called. */
  public String one() {
    return one;
  }

  /** The kind kept in a folder, if any. */
  public static Optional<Kind> of(String folder) {
    for (Kind kind : values()) {
      if (kind.folder.equals(folder)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
