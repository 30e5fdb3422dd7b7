package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.air.Release;
import benchlore.schedules.cutting.Bit;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.SolventShare;
import benchlore.schedules.material.Species;
import benchlore.schedules.material.UsePlace;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Single records as the engine sees them. */
public final class EngineData {
  private static final String WATER = "water";

  /** What a finish must state to be scheduled; a filler or a compound may leave some of it out. */
  private static final List<String> SCHEDULED =
      List.of(
          "reference-temperature",
          "reference-humidity",
          "minimum-temperature",
          "maximum-temperature",
          "maximum-humidity",
          "solids-by-volume",
          "density",
          "wet-film",
          "coats",
          "voc",
          "final-grade",
          "between-coat-grade");

  private EngineData() {}

  /** A species. */
  public static Species wood(LibraryRecord species) {
    Facts f = species.facts();
    return new Species(
        f.datum("specific-gravity"),
        f.optionalDatum("hardness"),
        f.datum("radial-shrinkage"),
        f.datum("tangential-shrinkage"),
        f.optionalDatum("movement-radial"),
        f.optionalDatum("movement-tangential"),
        pores(f.words("pores")),
        f.flag("open-grained"),
        f.flag("oily"),
        f.flag("blotch-prone"),
        f.words("group").equals("hardwood"),
        f.flag("tannin-rich"));
  }

  /** A species record's word for its pores. */
  private static Pores pores(String word) {
    return switch (word) {
      case "ring" -> Pores.RING_POROUS;
      case "semi-ring" -> Pores.SEMI_RING_POROUS;
      case "diffuse" -> Pores.DIFFUSE_POROUS;
      case "none" -> Pores.NONPOROUS;
      default -> throw new IllegalArgumentException("pores without a meaning: " + word);
    };
  }

  /** An adhesive. */
  public static Adhesive adhesive(LibraryRecord adhesive) {
    Facts f = adhesive.facts();
    return new Adhesive(
        f.word("family", Adhesive.Family.class),
        f.word("setting", Adhesive.Setting.class),
        f.flag("water-based"),
        f.datum("open-time"),
        f.optionalDatum("closed-time"),
        f.datum("clamp-time"),
        f.datum("handle-after"),
        f.datum("full-strength"),
        f.optionalDatum("machine-after"),
        f.datum("reference-temperature"),
        f.datum("minimum-temperature"),
        f.optionalDatum("maximum-temperature"),
        f.datum("spread"),
        f.datum("density"),
        f.datum("pressure-softwood"),
        f.datum("pressure-medium"),
        f.datum("pressure-hardwood"),
        f.datum("maximum-gap"),
        f.optionalDatum("rate-q10"),
        f.optionalDatum("pot-life"),
        f.word("oily-woods", Adhesive.OilyWoods.class),
        f.word("water-resistance", Adhesive.WaterResistance.class),
        f.flag("creeps"));
  }

  /**
   * A finish the engine can schedule.
   *
   * @return empty for a material that carries no drying figures, such as a rubbing compound
   */
  public static Optional<Finish> finish(LibraryRecord finish) {
    Facts f = finish.facts();
    for (String key : SCHEDULED) {
      if (f.optionalDatum(key).isEmpty()) {
        return Optional.empty();
      }
    }
    return Optional.of(schedulable(f));
  }

  private static Finish schedulable(Facts f) {
    return new Finish(
        f.word("family", FinishFamily.class),
        f.word("role", FinishRole.class),
        f.wordList("mechanisms", DryingMechanism.class),
        f.word("bond", CoatBond.class),
        f.optionalDatum("touch-dry"),
        f.optionalDatum("recoat-opens"),
        f.optionalDatum("sand-after"),
        f.optionalDatum("handle-after"),
        f.optionalDatum("light-use"),
        f.optionalDatum("full-cure"),
        f.optionalDatum("recoat-closes"),
        f.optionalDatum("stack-after"),
        f.optionalDatum("pot-life"),
        f.datum("reference-temperature"),
        f.datum("reference-humidity"),
        f.datum("minimum-temperature"),
        f.datum("maximum-temperature"),
        f.datum("maximum-humidity"),
        f.optionalDatum("minimum-humidity"),
        f.datum("solids-by-volume"),
        f.datum("density"),
        f.datum("wet-film"),
        f.datum("coats"),
        f.optionalDatum("maximum-dry-film"),
        f.datum("voc"),
        f.optionalDatum("rate-q10"),
        f.optionalDatum("flash-point"),
        shares(f),
        f.wordList("methods", ApplicationMethod.class),
        f.wordList("sheens", Sheen.class),
        f.flag("raises-grain"),
        f.flag("self-heating-rags"),
        f.flag("isocyanate"),
        f.datum("final-grade"),
        f.datum("between-coat-grade"),
        f.wordList("places", UsePlace.class));
  }

  private static List<SolventShare> shares(Facts f) {
    List<SolventShare> shares = new ArrayList<>();
    for (Facts share : f.groups("solvents")) {
      double part = share.datum("share").mid() / 100;
      shares.add(new SolventShare(share.words("solvent"), part));
    }
    return shares;
  }

  /** A solvent. */
  public static Solvent solvent(LibraryRecord solvent) {
    Facts f = solvent.facts();
    return new Solvent(
        solvent.id(),
        f.datum("molar-mass"),
        f.datum("density"),
        f.optionalDatum("boiling-point"),
        f.optionalDatum("flash-point"),
        f.optionalDatum("lower-explosive-limit"),
        f.optionalDatum("upper-explosive-limit"),
        f.optionalDatum("vapour-pressure"),
        f.optionalDatum("osha-pel"),
        f.optionalDatum("niosh-rel"),
        f.optionalDatum("idlh"),
        f.optionalDatum("evaporation-rate"),
        f.flag("refused-at-home"));
  }

  /**
   * The organic part of what evaporates from a finish, shares by mass that add up to 1; the figure
   * for solvent in the tin counts no water, so water is left out here too.
   */
  public static List<Release.Share> organic(Finish finish, Library library) {
    double whole = 0;
    for (SolventShare share : finish.solvents()) {
      whole = share.solvent().equals(WATER) ? whole : share.massShare() + whole;
    }
    List<Release.Share> shares = new ArrayList<>();
    for (SolventShare share : finish.solvents()) {
      if (!share.solvent().equals(WATER)) {
        LibraryRecord entry = library.find(Kind.SOLVENTS, share.solvent()).orElseThrow();
        shares.add(new Release.Share(solvent(entry), share.massShare() / whole));
      }
    }
    return shares;
  }

  /**
   * A router bit as cutting sees it: of a range the middle, a shank of the usual length, no speed
   * marked. Records don't say how high a bearing is, so it has none: speed, feed and passes ask for
   * none either.
   */
  public static Bit bit(LibraryRecord bit) {
    Facts f = bit.facts();
    return Bit.plain(
        f.datum("diameter").mid(),
        (int) f.datum("flutes").mid(),
        f.datum("cutting-length").mid(),
        f.datum("shank").mid());
  }

  /** The single figure of a range that a plan takes where its file gives none: the middle. */
  static double usual(SourcedRange datum) {
    return datum.mid();
  }
}
