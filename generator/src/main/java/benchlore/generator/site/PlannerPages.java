package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.page.Link;
import benchlore.generator.page.PlannerModel;
import benchlore.generator.page.PlannerModel.Choice;
import benchlore.generator.page.PlannerModel.Swatch;
import benchlore.generator.page.PlannerModel.WordChoice;
import benchlore.generator.page.PlannersModel.Planner;
import benchlore.generator.planning.EngineData;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.project.Shop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

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

  PlannerModel model(Planner planner) {
    return new PlannerModel(
        planner, START, LATER, records(), words(), swatches(), PlannerShop.form(shop));
  }

  private PlannerModel.Records records() {
    return new PlannerModel.Records(
        choices(library.of(Kind.SPECIES)),
        choices(library.of(Kind.ADHESIVES)),
        choices(
            library.of(Kind.FINISHES).stream()
                .filter(finish -> EngineData.finish(finish).isPresent())
                .toList()),
        choices(library.of(Kind.ROUTER_BITS)));
  }

  private static PlannerModel.Words words() {
    return new PlannerModel.Words(
        List.of(
            new Choice("heated-room", "a heated room"),
            new Choice("conditioned-room", "a room kept steady all year"),
            new Choice("unheated-shed", "an unheated shed or garage"),
            new Choice("outdoors-covered", "outdoors under a roof"),
            new Choice("boat-cabin", "a boat's cabin")),
        Arrays.stream(Sheen.values()).map(s -> choice(s, word(s))).toList(),
        Arrays.stream(ApplicationMethod.values()).map(m -> choice(m, title(m))).toList());
  }

  private static String title(ApplicationMethod method) {
    return switch (method) {
      case BRUSH, PAD, ROLLER -> word(method);
      case WIPE -> "cloth, thin";
      case FLOOD -> "flooding and wiping off";
      case SPRAY -> "spray gun";
    };
  }

  private static WordChoice choice(Enum<?> constant, String title) {
    return new WordChoice(constant.name(), word(constant), title);
  }

  private static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The window mirrored in each sheen the engine knows, where the library has its record. */
  private List<Swatch> swatches() {
    List<Swatch> swatches = new ArrayList<>();
    for (Sheen sheen : Sheen.values()) {
      library
          .find(Kind.SHEENS, word(sheen))
          .map(record -> swatch(sheen, record))
          .ifPresent(swatches::add);
    }
    return swatches;
  }

  private static Swatch swatch(Sheen sheen, LibraryRecord record) {
    Link link = new Link(record.url(), record.title());
    return new Swatch(sheen.name(), link, SheenDrawings.patch(record));
  }

  private static List<Choice> choices(List<LibraryRecord> entries) {
    return entries.stream().map(entry -> new Choice(entry.id(), entry.title())).toList();
  }
}
