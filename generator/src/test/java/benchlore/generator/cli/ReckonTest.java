package benchlore.generator.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sums of the trade by the command line, each against a published or closed-form figure. */
final class ReckonTest {
  @ParameterizedTest(name = "{0} = {1}")
  @CsvSource({
    // Wet film formulae page of a coating supplier: 100 dry at 62 % is 161 wet.
    "wet-film 100 62 0, 161.3 µm wet",
    "thinned-solids 25 1, 12.50 % solids by volume",
    "thinner 25 12.5, 1.000 volumes of thinner to one of finish",
    // Router-bit speed page: 3 in at 10,000 rpm is 39.9 m/s.
    "rim-speed 76.2 10000, 39.90 m/s at the edge",
    "rpm 76.2 39.9, 1.000e+04 rpm",
    "steady-air 100 500 1, 200.0 mg/m3",
    "air-for 100 200 3, 1500 m3/h of outdoor air",
    // 29 CFR 1910.1000(d)(2), the rule's own example.
    "mixture 500 1000 45 200 40 200, 0.9250 of the limit; above 1 is too much",
    "'mixture-limit 0.5 1640 0.3 1910 0.2 170', "
        + "'610.3 in the unit of the limits, mass a volume'",
    "movement 100 7.1 8 10, '0.4969 mm, swelling if above 0'",
    "movement-from-green 100 8 30 0, '-8.000 mm, swelling if above 0'"
  })
  void aSumGivesItsFigure(String asked, String given) {
    Object[] words = ("reckon " + asked).split(" ", -1);
    Run run = Run.of(words);
    assertEquals(given, run.out().strip(), run.err());
    assertEquals(0, run.code());
  }

  @Test
  void everySumIsListedWithWhatItAsksFor() {
    String list = Run.of("reckon").out();
    for (Sum sum : Sum.values()) {
      assertTrue(list.contains(sum.word() + ": " + sum.asks().get(0)), sum.word());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "reckon no-such, there is no sum no-such",
    "reckon rpm 3, rpm asks for",
    "reckon wet-film 50 0 0, the rule does not hold",
    "reckon mixture 5 0, the rule does not hold"
  })
  void whatCantBeReckonedSaysWhy(String line, String why) {
    Object[] words = line.split(" ", -1);
    Run run = Run.of(words);
    assertTrue(run.err().contains(why), run.err());
    assertEquals(2, run.code());
    assertEquals("", run.out());
  }
}
