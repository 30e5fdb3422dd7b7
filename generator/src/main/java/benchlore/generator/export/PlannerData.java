package benchlore.generator.export;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.pagedata.ScriptData;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.EngineData;
import benchlore.schedules.air.IgnitionSource;
import benchlore.schedules.cutting.CuttingRequest;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.material.Finish;
import benchlore.schedules.movement.PlaceClimate;
import benchlore.schedules.movement.Tape;
import benchlore.schedules.project.CoatChoice;
import benchlore.schedules.project.Materials;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.SandingTool;
import benchlore.schedules.time.Weekday;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Writes the script that carries into a page what a plan is made from: every record as the engine
 * takes it, the shop, and the engine's own tables. The site's {@code planner/records.js} unfolds
 * it.
 */
public final class PlannerData {
  private final Library library;
  private final Folded folded = new Folded();

  private PlannerData(Library library) {
    this.library = library;
  }

  /**
   * The script.
   *
   * @param content the records, the rules between them and the shop
   * @return JavaScript that sets {@code window.benchlorePlanner}
   */
  public static String script(Content content) {
    PlannerData data = new PlannerData(content.library());
    Map<String, Object> all = new LinkedHashMap<>();
    all.put("species", data.species());
    all.put("finishes", data.finishes());
    all.put("solvents", data.solvents());
    all.put("adhesives", data.adhesives());
    all.put("bits", data.bits());
    all.put("shop", content.shop().map(data.folded::value).orElse(null));
    all.put("trim", data.folded.value(CuttingRequest.Trim.none()));
    all.put("pace", data.folded.value(GlueUpRequest.Pace.usual(1)));
    all.put("places", data.places());
    all.put("grades", data.grades());
    all.put("tapes", data.folded.table(Tape.common()));
    all.put("planWords", planWords());
    all.put("suits", data.suits(content));
    all.put("units", data.folded.units());
    all.put("sources", data.folded.sources());
    return ScriptData.script("benchlorePlanner", all);
  }

  /** What the tables say of the records a plan can name. */
  private Map<String, Object> suits(Content content) {
    return new SuitsData(folded)
        .of(
            content,
            library.of(Kind.FINISHES).stream()
                .filter(entry -> EngineData.finish(entry).isPresent())
                .toList(),
            library.of(Kind.ADHESIVES),
            library.of(Kind.SPECIES));
  }

  /** Records of a kind with what the engine takes of each. */
  private Map<String, Object> records(Kind kind, Function<LibraryRecord, Optional<?>> engine) {
    List<Object> heads = new ArrayList<>();
    List<Object> records = new ArrayList<>();
    for (LibraryRecord entry : library.of(kind)) {
      Optional<?> record = engine.apply(entry);
      if (record.isPresent()) {
        heads.add(List.of(entry.id(), entry.title(), entry.url()));
        records.add(record.get());
      }
    }
    Map<String, Object> table = new LinkedHashMap<>();
    table.put("heads", heads);
    table.put("data", folded.table(records));
    return table;
  }

  private Map<String, Object> species() {
    Map<String, Object> table = records(Kind.SPECIES, entry -> Optional.of(EngineData.wood(entry)));
    List<Object> sanding = new ArrayList<>();
    for (LibraryRecord entry : library.of(Kind.SPECIES)) {
      sanding.add(Materials.sandingWood(EngineData.wood(entry)));
    }
    table.put("sanding", folded.table(sanding));
    return table;
  }

  private Map<String, Object> finishes() {
    Map<String, Object> table = records(Kind.FINISHES, EngineData::finish);
    List<Object> shares = new ArrayList<>();
    List<Object> sanded = new ArrayList<>();
    List<Object> usual = new ArrayList<>();
    for (LibraryRecord entry : library.of(Kind.FINISHES)) {
      Optional<Finish> finish = EngineData.finish(entry);
      finish.ifPresent(f -> shares.add(shares(f)));
      finish.ifPresent(f -> sanded.add(f.sandedBetweenCoats()));
      finish.ifPresent(f -> usual.add(folded.value(CoatChoice.usual(f))));
    }
    table.put("shares", shares);
    table.put("sanded", sanded);
    table.put("usual", usual);
    return table;
  }

  /** A solvent by its id, its part of the whole. */
  private record Share(String solvent, double massShare) {}

  /** The organic part of what evaporates, each solvent by its id, as the air rules take it. */
  private List<Object> shares(Finish finish) {
    List<Object> shares = new ArrayList<>();
    for (var share : EngineData.organic(finish, library)) {
      shares.add(folded.value(new Share(share.solvent().id(), share.massShare())));
    }
    return shares;
  }

  private Map<String, Object> solvents() {
    return records(Kind.SOLVENTS, entry -> Optional.of(EngineData.solvent(entry)));
  }

  private Map<String, Object> adhesives() {
    return records(Kind.ADHESIVES, entry -> Optional.of(EngineData.adhesive(entry)));
  }

  private Map<String, Object> bits() {
    return records(Kind.ROUTER_BITS, entry -> Optional.of(EngineData.bit(entry)));
  }

  /** The words of a plan file that the form has a field for each. */
  private static Map<String, Object> planWords() {
    Map<String, Object> words = new LinkedHashMap<>();
    words.put("hours", Arrays.stream(Weekday.values()).map(PlannerData::word).toList());
    words.put("ignition", Arrays.stream(IgnitionSource.values()).map(PlannerData::word).toList());
    words.put("sanders", Arrays.stream(SandingTool.values()).map(PlannerData::word).toList());
    return words;
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private List<Object> places() {
    List<Object> places = new ArrayList<>();
    for (PlaceClimate place : PlaceClimate.values()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("id", word(place));
      row.put("seasons", folded.value(place.seasons()));
      places.add(row);
    }
    return places;
  }

  private List<Object> grades() {
    List<Object> grades = new ArrayList<>();
    for (Grit grit : Grits.all(GritSystem.FEPA_P)) {
      grades.add(List.of(grit.label(), grit.micron(), folded.value(grit)));
    }
    return grades;
  }
}
