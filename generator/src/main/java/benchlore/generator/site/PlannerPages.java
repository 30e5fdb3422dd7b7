package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.planning.EngineData;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.project.Shop;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * The planners: pages whose form asks the engine's script, so that they answer without a server.
 * What can be chosen in them are the library's own records.
 */
final class PlannerPages {
  /** The folder of the planners, with a page that lists them. */
  static final String FOLDER = "planner/";

  // A Saturday morning; the page's script puts the reader's own next morning in its place.
  private static final String START = "2027-04-03T09:00";
  private static final String LATER = "2027-04-17T09:00";

  /**
   * A planner.
   *
   * @param name of the page and its template
   * @param title heading
   * @param lead what it answers
   */
  record Planner(String name, String title, String lead) {
    /** Its page, from the folder of the planners. */
    public String url() {
      return name + ".html";
    }
  }

  private static final List<Planner> ALL =
      List.of(
          new Planner(
              "finish",
              "A whole project",
              "From boards to finished parts in your own hours: glue, sand, test-fit, coat, cure."),
          new Planner(
              "glue-up",
              "Glue-up",
              "How long you have, how many clamps and where, when they come off, when you may"
                  + " machine."),
          new Planner(
              "sanding",
              "Sanding",
              "The grades worth using, how long each takes, and whether to let the machine do it."),
          new Planner(
              "air",
              "Air in the room",
              "How much solvent a coat lets into the room, the fan it takes, when to go back in."),
          new Planner(
              "fit",
              "Fit and movement",
              "How far wood moves in a year, the gap to leave, the tape that makes it."),
          new Planner(
              "cutting",
              "Speed, feed and passes",
              "What to set on the router or the CNC, and the ridges a ball nose leaves."),
          new Planner(
              "sheen",
              "Sheen",
              "See it before you commit, and find the way back if you change your mind."));

  private final Library library;
  private final Shop shop;

  PlannerPages(Library library, Shop shop) {
    this.library = library;
    this.shop = shop;
  }

  /** Every planner, in the order people need them. */
  static List<Planner> all() {
    return ALL;
  }

  /** The values of a planner's template. */
  Map<String, Object> values(Planner planner) {
    Map<String, Object> values = new HashMap<>();
    values.put("root", "../");
    values.put("name", planner.name());
    values.put("title", planner.title());
    values.put("lead", planner.lead());
    values.put("start", START);
    values.put("later", LATER);
    values.put("species", choices(library.of(Kind.SPECIES)));
    values.put("adhesives", choices(library.of(Kind.ADHESIVES)));
    values.put(
        "finishes",
        choices(
            library.of(Kind.FINISHES).stream()
                .filter(finish -> EngineData.finish(finish).isPresent())
                .toList()));
    values.put("bits", choices(library.of(Kind.ROUTER_BITS)));
    values.put("places", places());
    values.put("sheens", sheens());
    values.put("methods", methods());
    values.put("swatches", swatches());
    values.put("shop", PlannerShop.figures(shop));
    values.put("weekdays", PlannerShop.weekdays(shop));
    values.put("grades", PlannerShop.grades(shop));
    values.put("sanders", PlannerShop.sanders(shop));
    values.put("ignition", PlannerShop.ignition(shop));
    return values;
  }

  private static List<Map<String, String>> places() {
    return List.of(
        choice("heated-room", "a heated room"),
        choice("conditioned-room", "a room kept steady all year"),
        choice("unheated-shed", "an unheated shed or garage"),
        choice("outdoors-covered", "outdoors under a roof"),
        choice("boat-cabin", "a boat's cabin"));
  }

  private static List<Map<String, String>> sheens() {
    List<Map<String, String>> sheens = new ArrayList<>();
    for (Sheen sheen : Sheen.values()) {
      String word = word(sheen);
      sheens.add(Map.of("value", sheen.name(), "word", word, "title", word));
    }
    return sheens;
  }

  private static List<Map<String, String>> methods() {
    List<Map<String, String>> methods = new ArrayList<>();
    for (ApplicationMethod method : ApplicationMethod.values()) {
      String title =
          switch (method) {
            case BRUSH, PAD, ROLLER -> word(method);
            case WIPE -> "cloth, thin";
            case FLOOD -> "flooding and wiping off";
            case SPRAY -> "spray gun";
          };
      methods.add(Map.of("value", method.name(), "word", word(method), "title", title));
    }
    return methods;
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The window mirrored in each sheen the engine knows, where the library has its record. */
  private List<Map<String, String>> swatches() {
    List<Map<String, String>> swatches = new ArrayList<>();
    for (Map<String, String> sheen : sheens()) {
      library
          .find(Kind.SHEENS, sheen.get("word"))
          .ifPresent(
              record ->
                  swatches.add(
                      Map.of(
                          "value", sheen.get("value"),
                          "title", record.title(),
                          "url", record.url(),
                          "svg", SheenDrawings.patch(record))));
    }
    return swatches;
  }

  private static Map<String, String> choice(String value, String title) {
    return Map.of("value", value, "title", title);
  }

  private static List<Map<String, String>> choices(List<LibraryRecord> entries) {
    List<Map<String, String>> choices = new ArrayList<>();
    for (LibraryRecord entry : entries) {
      choices.add(Map.of("value", entry.id(), "title", entry.title()));
    }
    return choices;
  }
}
