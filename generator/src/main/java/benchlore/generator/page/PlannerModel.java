package benchlore.generator.page;

import java.util.List;

/**
 * A planner's page: its form as it stands before anyone touches it.
 *
 * @param planner which
 * @param start when the form's work begins, as 2027-04-03T09:00
 * @param later when it goes on, in the same form
 * @param records the records one chooses from
 * @param words the engine's words one chooses from
 * @param swatches a window mirrored in each sheen that has a record
 * @param shop the shop
 */
public record PlannerModel(
    PlannersModel.Planner planner,
    String start,
    String later,
    Records records,
    Words words,
    List<Swatch> swatches,
    ShopForm shop)
    implements PageModel {
  /** Copies the list. */
  public PlannerModel {
    swatches = List.copyOf(swatches);
  }

  @Override
  public String template() {
    return "planner-" + planner.name();
  }

  /**
   * An option of a choice.
   *
   * @param value what the form says
   * @param title what people read
   */
  public record Choice(String value, String title) {}

  /**
   * An option that the engine and a plan file call differently.
   *
   * @param value the engine's constant
   * @param word the word of a plan file
   * @param title what people read
   */
  public record WordChoice(String value, String word, String title) {}

  /**
   * The records one chooses from.
   *
   * @param species every wood
   * @param adhesives every adhesive
   * @param finishes those the engine can plan with
   * @param bits every router bit
   */
  public record Records(
      List<Choice> species, List<Choice> adhesives, List<Choice> finishes, List<Choice> bits) {
    /** Copies the lists. */
    public Records {
      species = List.copyOf(species);
      adhesives = List.copyOf(adhesives);
      finishes = List.copyOf(finishes);
      bits = List.copyOf(bits);
    }
  }

  /**
   * The engine's words one chooses from.
   *
   * @param places where a piece will live
   * @param sheens dullest first
   * @param methods how a coat is put on
   */
  public record Words(List<Choice> places, List<WordChoice> sheens, List<WordChoice> methods) {
    /** Copies the lists. */
    public Words {
      places = List.copyOf(places);
      sheens = List.copyOf(sheens);
      methods = List.copyOf(methods);
    }
  }

  /**
   * A sheen to look at.
   *
   * @param value the engine's constant
   * @param link its record's page and title
   * @param svg a window mirrored in it
   */
  public record Swatch(String value, Link link, String svg) {}
}
