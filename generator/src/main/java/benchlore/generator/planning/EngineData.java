package benchlore.generator.planning;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.air.Release;
import benchlore.schedules.cutting.Bit;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Field;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.SolventShare;
import benchlore.schedules.material.Species;
import benchlore.schedules.quantity.SourcedRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Single records as the engine sees them. */
public final class EngineData {
  private static final String WATER = "water";

  private EngineData() {}

  /** A species. */
  public static Species wood(LibraryRecord species) {
    return Species.table().read(FactFields.of(species));
  }

  /** An adhesive. */
  public static Adhesive adhesive(LibraryRecord adhesive) {
    return Adhesive.table().read(FactFields.of(adhesive));
  }

  /**
   * A finish the engine can schedule.
   *
   * @return empty for a material that carries no drying figures, such as a rubbing compound
   */
  public static Optional<Finish> finish(LibraryRecord finish) {
    return schedulable(finish)
        ? Optional.of(Finish.table().read(FactFields.of(finish)))
        : Optional.empty();
  }

  /**
   * Whether a finish states all that is needed; a filler or a compound may leave some of it out.
   */
  static boolean schedulable(LibraryRecord finish) {
    for (Field<Finish, ?> field : Finish.table().fields()) {
      if (field.required() && finish.facts().find(field.key()).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** A solvent. */
  public static Solvent solvent(LibraryRecord solvent) {
    return Solvent.table().read(FactFields.of(solvent));
  }

  /**
   * The organic part of what evaporates from a finish, shares by mass that add up to 1; the figure
   * for solvent in the tin counts no water, so water is left out here too.
   */
  public static List<Release.Share> organic(Finish finish, Library library) {
    double whole = 0;
    for (SolventShare share : finish.liquid().solvents()) {
      whole = share.solvent().equals(WATER) ? whole : share.massShare() + whole;
    }
    List<Release.Share> shares = new ArrayList<>();
    for (SolventShare share : finish.liquid().solvents()) {
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
