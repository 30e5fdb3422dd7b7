package benchlore.schedules.projectfile;

import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Species;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Suits;
import java.util.List;
import java.util.Optional;

/** The records a plan names, by their ids. */
public interface Records {
  /** A species; empty if there is none of that id. */
  Optional<Species> species(String id);

  /** An adhesive; empty if there is none of that id. */
  Optional<Adhesive> adhesive(String id);

  /**
   * A finish that goes on in coats, by its title, put on as its record has it; empty if there is
   * none of that id with drying figures.
   */
  Optional<Layer> finish(String id);

  /**
   * What the tables say of records that were found here.
   *
   * @param species the wood's id
   * @param adhesive the adhesive's
   * @param finishes those of the finishes, the first on the wood first
   * @param place where the parts will live
   */
  Suits suits(String species, String adhesive, List<String> finishes, PlaceClimate place);
}
