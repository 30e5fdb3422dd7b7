package benchlore.schedules.present;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

final class FigureTextTest {
  /** Against conversions anyone can look up: the inch is 25.4 mm, water freezes at 32 °F. */
  @Test
  void imperialFiguresAreRight() {
    assertEquals("3/4\u00a0in", imperial(0.01905, 0.01905, Unit.METRE));
    assertEquals("1 1/2–2\u00a0in", imperial(0.0381, 0.0508, Unit.METRE));
    assertEquals("0.004\u00a0in", imperial(0.0001016, 0.0001016, Unit.METRE));
    assertEquals("10\u00a0ft", imperial(3.048, 3.048, Unit.METRE));
    assertEquals("32\u00a0°F", imperial(0, 0, Unit.CELSIUS));
    assertEquals("68\u00a0°F", imperial(20, 20, Unit.CELSIUS));
    assertEquals("18\u00a0°F", imperial(10, 10, Unit.CELSIUS_DIFFERENCE));
    assertEquals("5\u00a0mil", imperial(127, 127, Unit.MICRON));
    assertEquals("1\u00a0US gal", imperial(0.003785411784, 0.003785411784, liquid()));
    assertEquals("16\u00a0US fl oz", imperial(0.000473176473, 0.000473176473, liquid()));
    assertEquals("1\u00a0lb", imperial(0.45359237, 0.45359237, Unit.KILOGRAM));
    assertEquals("150\u00a0psi", imperial(1034213.593975254, 1034213.593975254, Unit.PASCAL));
    assertEquals("100\u00a0cfm", imperial(0.0471947443, 0.0471947443, air()));
    assertEquals("4\u00a0h", imperial(14400, 14400, Unit.SECOND));
    assertEquals("5 1/16\u00a0in", imperial(0.1285, 0.1285, Unit.METRE));
  }

  private static Unit liquid() {
    return Unit.CUBIC_METRE_LIQUID;
  }

  private static Unit air() {
    return Unit.CUBIC_METRE_PER_SECOND;
  }

  @Test
  void metricFiguresTakeTheUnitThatFitsTheirSize() {
    assertEquals("25.4\u00a0mm", metric(0.0254, 0.0254, Unit.METRE));
    assertEquals("1.2\u00a0m", metric(1.2, 1.2, Unit.METRE));
    assertEquals("4–8\u00a0h", metric(14_400, 28_800, Unit.SECOND));
    assertEquals("7\u00a0days", metric(604_800, 604_800, Unit.SECOND));
    assertEquals("90\u00a0µm", metric(90, 90, Unit.MICRON));
    assertEquals("55%", metric(55, 55, Unit.PERCENT));
    assertEquals("45°", metric(45, 45, Unit.DEGREE));
    assertEquals("\u22122.5\u00a0°C", metric(-2.5, -2.5, Unit.CELSIUS));
    assertEquals("0.2\u00a0% per point of moisture", moves(0.002));
    assertEquals("18\u202f000\u00a0rpm", metric(18_000, 18_000, Unit.RPM));
  }

  private static String moves(double share) {
    return metric(share, share, Unit.PER_PERCENT_MOISTURE);
  }

  /** Every unit has a name of its own kind in both systems. */
  @Test
  void everyUnitIsShownInAUnitOfItsOwnKind() {
    for (Unit unit : Unit.values()) {
      for (UnitSystem system : UnitSystem.values()) {
        for (double value : new double[] {0, 1e-5, 0.02, 0.7, 50, 5e3, 3e6}) {
          assertEquals(unit, ShownUnits.of(value, unit, system).unit(), unit + " " + value);
        }
      }
    }
  }

  /** The JDK's decimals round the shortest text of a number half up. */
  @Test
  void numbersRoundAsTheJdksDecimalsDo() {
    SplittableRandom random = new SplittableRandom(7);
    for (int i = 0; i < 50_000; i++) {
      BigDecimal exact = BigDecimal.valueOf(random.nextInt(1, 100_000), random.nextInt(-2, 9));
      double size = exact.doubleValue();
      String read = FigureText.number(size).replace("\u202f", "");
      assertEquals(decimal(exact), read, exact.toString());
    }
    assertEquals("1.01", FigureText.number(1.005));
    assertEquals("0", FigureText.number(-0.0));
    assertEquals("–", FigureText.number(Double.NaN));
    assertEquals("1234", FigureText.number(1234));
    assertEquals("12\u202f345", FigureText.number(12_345));
  }

  private static String decimal(BigDecimal exact) {
    BigDecimal rounded =
        exact.doubleValue() >= 100
            ? exact.setScale(0, RoundingMode.HALF_UP)
            : exact.round(new MathContext(3, RoundingMode.HALF_UP));
    return rounded.stripTrailingZeros().toPlainString();
  }

  @Test
  void aSentenceHasItsQuantitiesInTheReadersUnits() {
    Message message =
        Message.of(
            "Wait {0} at {1}.", Quantity.of(7_200, Unit.SECOND), Quantity.of(20, Unit.CELSIUS));
    assertEquals("Wait 2\u00a0h at 20\u00a0°C.", FigureText.sentence(message, UnitSystem.METRIC));
    assertEquals("Wait 2\u00a0h at 68\u00a0°F.", FigureText.sentence(message, UnitSystem.IMPERIAL));
    assertFalse(FigureText.sentence(message, UnitSystem.IMPERIAL).contains("{"));
  }

  @Test
  void theFiguresOfASentenceAreApartFromItsWords() {
    Message message =
        Message.of(
            "{1}, then wait {0}, again {1}",
            Quantity.of(7_200, Unit.SECOND), Quantity.of(20, Unit.CELSIUS));
    FigureText.Part warmth = new FigureText.Part("20\u00a0°C", "68\u00a0°F", true);
    assertEquals(
        List.of(
            warmth,
            new FigureText.Part(", then wait ", ", then wait ", false),
            new FigureText.Part("2\u00a0h", "2\u00a0h", true),
            new FigureText.Part(", again ", ", again ", false),
            warmth),
        FigureText.Part.of(message));
    assertEquals(List.of(), FigureText.Part.of(Message.of("")));
  }

  @Test
  void aMachineIsSetInWholeNumbersOfTheFieldsUnit() {
    NamedUnit feed = NamedUnit.MILLIMETRE_PER_MINUTE;
    assertEquals(
        "1200–1500\u00a0mm/min", FigureText.setting(0.02, 0.0249999, feed, UnitSystem.METRIC));
    assertEquals("47\u00a0in/min", FigureText.setting(0.02, 0.02, feed, UnitSystem.IMPERIAL));
  }

  private static String imperial(double low, double high, Unit unit) {
    return FigureText.text(low, high, unit, UnitSystem.IMPERIAL);
  }

  private static String metric(double low, double high, Unit unit) {
    return FigureText.text(low, high, unit, UnitSystem.METRIC);
  }

  @Test
  void aSentenceIsNoFinerThanAShopCanMeasure() {
    assertEquals("4.5\u00a0g", told(0.0044637, Unit.KILOGRAM));
    assertEquals("2700\u00a0m\u00b3/h", told(2727.3 / 3600, Unit.CUBIC_METRE_PER_SECOND));
    assertEquals("5\u00a0h\u00a045\u00a0min", told(5.8 * 3600, Unit.SECOND));
    assertEquals("6\u00a0h", told(6.1 * 3600, Unit.SECOND));
    assertEquals("39\u00a0h", told(38.7 * 3600, Unit.SECOND));
    assertEquals("9\u00a0days", told(9.2 * 86_400, Unit.SECOND));
  }

  @Test
  void whatWasGivenOrStatedStaysAsItIs() {
    assertEquals("87.5\u00a0\u00b5m", told(87.5, Unit.MICRON));
    assertEquals("305\u00a0mm", told(0.305, Unit.METRE));
    assertEquals("13\u00a0\u00b0C", told(13, Unit.CELSIUS));
    assertEquals(
        "55.4\u00a0\u00b0F", FigureText.told(Quantity.of(13, Unit.CELSIUS), UnitSystem.IMPERIAL));
  }

  private static String told(double value, Unit unit) {
    return FigureText.told(Quantity.of(value, unit), UnitSystem.METRIC);
  }
}
