package benchlore.generator.page;

import java.util.List;

/**
 * The shop as what stands in a planner's form before anyone touches it; figures as they are typed,
 * each in its field's own unit.
 *
 * @param room its room and the air in it
 * @param clamps its clamps
 * @param people how many work there
 * @param weekdays its hours
 * @param grades every P grade
 * @param sanders names of the sanders there are
 * @param ignition what can light a vapour
 */
public record ShopForm(
    Room room,
    Clamps clamps,
    String people,
    List<Day> weekdays,
    List<Grade> grades,
    List<String> sanders,
    List<Ignition> ignition) {
  /** Copies the lists. */
  public ShopForm {
    weekdays = List.copyOf(weekdays);
    grades = List.copyOf(grades);
    sanders = List.copyOf(sanders);
    ignition = List.copyOf(ignition);
  }

  /**
   * A room and the air in it.
   *
   * @param low coldest at night, °C
   * @param high warmest by day, °C
   * @param celsius mean, °C
   * @param humidity relative, in the afternoon, %
   * @param volume of air, m³
   * @param changes of air, per hour
   * @param mixing 1 is perfect, 10 a dead corner
   */
  public record Room(
      String low,
      String high,
      String celsius,
      String humidity,
      String volume,
      String changes,
      String mixing) {}

  /**
   * The clamps of a shop.
   *
   * @param count how many
   * @param force of one, N
   * @param caul depth of the cauls, mm
   * @param jaw width of a jaw, mm
   */
  public record Clamps(String count, String force, String caul, String jaw) {}

  /**
   * The hours of a day of the week.
   *
   * @param value the day as a plan file says it
   * @param title the day as people read it
   * @param spans as 18:30-21:30, with commas between; empty for a day off
   */
  public record Day(String value, String title, String spans) {}

  /**
   * A grade of paper.
   *
   * @param label as P120
   * @param stocked whether it is on the shelf
   */
  public record Grade(String label, boolean stocked) {
    /** What a choice of grades sends. */
    public String value() {
      return label;
    }

    /** What a choice of grades shows. */
    public String title() {
      return label;
    }
  }

  /**
   * What can light a vapour.
   *
   * @param value the engine's constant
   * @param word the word of a plan file
   * @param title what people read
   * @param there whether the shop has it
   */
  public record Ignition(String value, String word, String title, boolean there) {}
}
