package benchlore.generator.planning;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.schedules.air.Release;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Species;
import benchlore.schedules.projectfile.Records;
import java.util.List;
import java.util.Optional;

/**
 * The records of a library as a plan file names them.
 *
 * @param library where they stand
 */
record PlanRecords(Library library) implements Records {
  @Override
  public Optional<Species> species(String id) {
    return library.find(Kind.SPECIES, id).map(EngineData::wood);
  }

  @Override
  public Optional<Adhesive> adhesive(String id) {
    return library.find(Kind.ADHESIVES, id).map(EngineData::adhesive);
  }

  @Override
  public Optional<Finish> finish(String id) {
    return library.find(Kind.FINISHES, id).flatMap(EngineData::finish);
  }

  @Override
  public List<Release.Share> solvents(Finish finish) {
    return EngineData.organic(finish, library);
  }
}
