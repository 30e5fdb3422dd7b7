package benchlore.generator.planning;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Species;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.project.Layer;
import benchlore.schedules.project.Suits;
import benchlore.schedules.projectfile.Records;
import java.util.List;
import java.util.Optional;

/**
 * The records of a library as a plan file names them.
 *
 * @param library where they stand
 * @param tables what goes with what of them
 */
record PlanRecords(Library library, PlanSuits tables) implements Records {
  @Override
  public Optional<Species> species(String id) {
    return library.find(Kind.SPECIES, id).map(EngineData::wood);
  }

  @Override
  public Optional<Adhesive> adhesive(String id) {
    return library.find(Kind.ADHESIVES, id).map(EngineData::adhesive);
  }

  @Override
  public Optional<Layer> finish(String id) {
    return library.find(Kind.FINISHES, id).flatMap(this::layer);
  }

  private Optional<Layer> layer(LibraryRecord entry) {
    Optional<Finish> finish = EngineData.finish(entry);
    return finish.map(f -> Layer.usual(entry.title(), f, EngineData.organic(f, library)));
  }

  @Override
  public Suits suits(String species, String adhesive, List<String> finishes, PlaceClimate place) {
    return tables.suits(species, adhesive, finishes, place);
  }
}
