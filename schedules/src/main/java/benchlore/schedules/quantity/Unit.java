package benchlore.schedules.quantity;

/**
 * The unit a number inside the engine is in. SI throughout; a page converts for display.
 *
 * <p>Film thickness and grain size are in micrometres and vapour in parts per million, as the trade
 * states them.
 */
public enum Unit {
  /** A plain ratio, fraction 0..1 or factor. */
  RATIO,
  /** A percentage, 0..100. */
  PERCENT,
  /** A count of things: coats, clamps, discs, boards. */
  COUNT,
  /** Seconds of time. */
  SECOND,
  /** Metres of length. */
  METRE,
  /** Square metres. */
  SQUARE_METRE,
  /** Cubic metres: rooms and air. */
  CUBIC_METRE,
  /** Cubic metres of liquid, shown in litres or millilitres. */
  CUBIC_METRE_LIQUID,
  /** Kilograms. */
  KILOGRAM,
  /** Kilograms a cubic metre: density. */
  KILOGRAM_PER_CUBIC_METRE,
  /** Kilograms a square metre: glue spread. */
  KILOGRAM_PER_SQUARE_METRE,
  /** Kilograms a cubic metre of airborne matter, shown in mg/m3: dust and vapour. */
  AIRBORNE_KILOGRAM_PER_CUBIC_METRE,
  /** Kilograms a mole: molar mass. */
  KILOGRAM_PER_MOLE,
  /** Joules a mole: activation energy. */
  JOULE_PER_MOLE,
  /** Degrees Celsius, a reading. */
  CELSIUS,
  /** Degrees Celsius, a difference. */
  CELSIUS_DIFFERENCE,
  /** Pascals: pressure, vapour pressure. */
  PASCAL,
  /** Newtons: clamp force, hardness. */
  NEWTON,
  /** Micrometres: film thickness, grain size, scratch depth. */
  MICRON,
  /** Parts per million by volume. */
  PPM,
  /** Cubic metres of air a second. */
  CUBIC_METRE_PER_SECOND,
  /** Metres a second: feed, rim speed. */
  METRE_PER_SECOND,
  /** Revolutions a minute, as every router states it. */
  RPM,
  /** Air changes an hour. */
  PER_HOUR,
  /** Square metres covered by a cubic metre of liquid, shown in m2/L. */
  SQUARE_METRE_PER_CUBIC_METRE,
  /** Seconds of work for a square metre. */
  SECOND_PER_SQUARE_METRE,
  /** Change in size for one percentage point of moisture, as a fraction. */
  PER_PERCENT_MOISTURE,
  /** Degrees of angle. */
  DEGREE,
  /** Gloss units at 60 degrees. */
  GLOSS_UNIT
}
