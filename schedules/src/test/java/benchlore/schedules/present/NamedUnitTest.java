package benchlore.schedules.present;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class NamedUnitTest {
  @Test
  void aWordMeansOneUnit() {
    Set<String> words = new HashSet<>();
    for (NamedUnit unit : NamedUnit.values()) {
      for (String word : unit.words()) {
        assertTrue(words.add(word), word);
        assertEquals(unit, NamedUnit.find(word).orElseThrow());
      }
    }
  }

  @Test
  void aNumberGoesThereAndBack() {
    for (NamedUnit unit : NamedUnit.values()) {
      for (double number : new double[] {-40, 0, 0.75, 212}) {
        assertEquals(number, unit.fromEngine(unit.toEngine(number)), 1e-9, unit.name());
      }
    }
    assertEquals(100, NamedUnit.FAHRENHEIT.toEngine(212), 1e-12);
  }

  @Test
  void amountsAreReadAsPeopleWriteThem() {
    assertEquals(0.9, amount("900 mm"), 1e-12);
    assertEquals(0.0127, amount("1/2 in"), 1e-12);
    assertEquals(0.0381, amount("1 1/2 in"), 1e-12);
    assertEquals(0.0381, amount("1-1/2\""), 1e-12);
    assertEquals(0.0185, amount("18,5 mm"), 1e-12);
    assertEquals(4.444444444, amount("40 F"), 1e-9);
    assertEquals(-2.5, amount("\u22122.5 °C"), 1e-12);
    assertEquals(5400, amount("1.5 h"), 1e-9);
    for (String bad :
        new String[] {"", "mm", "900", "900 furlongs", "1/0 in", "1.2.3 mm", "- mm"}) {
      assertTrue(Amount.find(bad).isEmpty(), bad);
    }
  }

  private static double amount(String text) {
    return Amount.find(text).orElseThrow().value();
  }

  @Test
  void whatIsTypedIntoAFieldIsReadInTheReadersUnits() {
    assertEquals(19.05, typed("3/4", NamedUnit.MILLIMETRE, UnitSystem.IMPERIAL));
    assertEquals(18, typed("18 mm", NamedUnit.MILLIMETRE, UnitSystem.IMPERIAL));
    assertEquals(25.4, typed("1 in", NamedUnit.MILLIMETRE, UnitSystem.METRIC));
    assertEquals(20, typed("68", NamedUnit.CELSIUS, UnitSystem.IMPERIAL));
    assertEquals(20, typed("68 F", NamedUnit.CELSIUS, UnitSystem.METRIC));
    assertEquals(90, typed("1.5 h", NamedUnit.MINUTE, UnitSystem.METRIC));
    assertEquals(4, typed("4", FieldMeasure.field(""), UnitSystem.IMPERIAL));
    assertEquals(
        OptionalDouble.empty(),
        FieldMeasure.parse("18 kg", NamedUnit.MILLIMETRE, UnitSystem.METRIC));
  }

  private static double typed(String text, NamedUnit field, UnitSystem system) {
    return FieldMeasure.parse(text, field, system).orElseThrow();
  }

  @Test
  void aFieldIsShownAsTheReadersRuleWouldReadIt() {
    assertEquals("3/4", FieldMeasure.text(19.05, NamedUnit.MILLIMETRE, UnitSystem.IMPERIAL));
    assertEquals("19.05", FieldMeasure.text(19.05, NamedUnit.MILLIMETRE, UnitSystem.METRIC));
    assertEquals("68", FieldMeasure.text(20, NamedUnit.CELSIUS, UnitSystem.IMPERIAL));
    assertEquals("-5", FieldMeasure.text(-5, NamedUnit.CELSIUS, UnitSystem.METRIC));
    assertEquals("18000", FieldMeasure.text(18_000, NamedUnit.RPM, UnitSystem.METRIC));
    assertEquals("0", FieldMeasure.text(0, NamedUnit.MILLIMETRE, UnitSystem.IMPERIAL));
    assertEquals("in", FieldMeasure.unit(NamedUnit.MILLIMETRE, UnitSystem.IMPERIAL).symbol());
  }
}
