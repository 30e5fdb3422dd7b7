package benchlore.schedules.caution;

import static benchlore.schedules.answer.Caution.Severity.DANGER;
import static benchlore.schedules.answer.Caution.Severity.HEALTH;
import static benchlore.schedules.answer.Caution.Severity.WORK;

/** What several trades warn of in the same words, and what the steps of a project do. */
public final class ShopRows {
  public static final CautionRow OILY_RAGS =
      CautionRow.practice(
          "oily-rags",
          "oily rags",
          DANGER,
          "Rags wet with oil finish heat up by themselves and catch fire within hours.",
          "Spread them flat outdoors until hard, or under water in a lidded metal can.");

  public static final CautionRow WOOD_DUST =
      CautionRow.practice(
          "wood-dust",
          "wood dust",
          HEALTH,
          "Fine wood dust harms the lungs and can cause cancer of the nose.",
          "Extraction, a fitted particle mask; vacuum or wipe damp, never sweep or blow.");

  public static final CautionRow FINISH_DUST_FIRE =
      CautionRow.practice(
          "finish-dust-fire",
          "dust in the bag",
          DANGER,
          "Sanding dust of a finish can light in the bag hours later.",
          "Empty it after each session into a lidded metal can outdoors.");

  public static final CautionRow FINISH_DUST =
      CautionRow.practice(
          "finish-dust",
          "finish dust",
          HEALTH,
          "Dust of a finish harms the lungs; oil-finish dust can light by itself.",
          "Particle mask, extraction, dust into a lidded metal can outdoors.");

  public static final CautionRow FILLER_DUST =
      CautionRow.memory(
          "filler-dust",
          "filler dust",
          HEALTH,
          "Filler dust can hold silica, which scars lungs for good.",
          "Extraction and a mask for fine dust, P100 or FFP3.");

  public static final CautionRow ROTATING_CUTTER =
      CautionRow.practice(
          "rotating-cutter",
          "rotating cutter",
          DANGER,
          "A spinning bit takes fingers and throws what is loose.",
          "Clamp the work, guard eyes and ears, unplug before you touch a bit.");

  public static final CautionRow JOINT_TOO_YOUNG =
      CautionRow.practice(
          "joint-too-young",
          "the joint is young",
          DANGER,
          "This was done {0} before what it waits for was over.",
          "Clamp it again if the line has opened. Don't load it or bring it near a cutter until the"
              + " whole time has passed: a young joint flies apart. The label wins.");

  public static final CautionRow DONE_EARLY =
      CautionRow.practice(
          "done-early",
          "done early",
          WORK,
          "This was done {0} before what it waits for was over.",
          "Look at it before you go on: press a fingernail where it does not show. Soft or tacky,"
              + " leave it for as long again; what is wrinkled or lifts comes off.");

  public static final CautionRow EPOXY_SKIN =
      CautionRow.practice(
          "epoxy-skin",
          "epoxy on the skin",
          HEALTH,
          "Uncured epoxy can make skin allergic for life; a large batch in a pot can get hot and"
              + " smoke.",
          "Wear nitrile gloves, clean skin with soap and not with solvent, mix small and spread it"
              + " out.");

  public static final CautionRow SOLVENT_WIPE =
      CautionRow.practice(
          "solvent-wipe",
          "solvent wipe",
          DANGER,
          "What a solvent wipe gives off catches fire far away.",
          "No flame, heater or spark; open the doors, wear the gloves its safety data sheet names,"
              + " and dry the rags flat outdoors.");

  private ShopRows() {}
}
