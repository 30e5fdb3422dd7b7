package benchlore.schedules.projectfile;

import benchlore.schedules.air.Release;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Species;
import java.util.List;
import java.util.Optional;

/** The records a plan names, by their ids. */
public interface Records {
  /** A species; empty if there is none of that id. */
  Optional<Species> species(String id);

  /** An adhesive; empty if there is none of that id. */
  Optional<Adhesive> adhesive(String id);

  /** A finish that goes on in coats; empty if there is none of that id with drying figures. */
  Optional<Finish> finish(String id);

  /** What evaporates of a finish that was found here, by mass. */
  List<Release.Share> solvents(Finish finish);
}
