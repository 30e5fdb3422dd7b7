package benchlore.generator.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.quantity.SourcedRange;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Figures and names that hurt someone or break a cutter if they are wrong. */
class SafeFiguresTest {
  private static final double WIDE_METRE = 0.035;
  private static final double STOUT_SHANK_METRE = 0.0115;

  private static Library library;

  @BeforeAll
  static void loadContent() throws IOException {
    library = LibraryLoader.load(Path.of("..", "content")).value().orElseThrow();
  }

  @Test
  void oneEdgeIsFedHalfOfTwoWhereverItIsTold() {
    double one = figure("choosing-chip-load", "Feed for each turn of the bit, one edge").low();
    double two = figure("choosing-chip-load", "Feed for each turn of the bit, two edges").low();
    double bite = figure("choosing-chip-load", "Bite per edge, 1/4 in bit, hardwood").low();
    assertEquals(bite, one, 1e-12);
    assertEquals(2 * bite, two, 1e-12);
    LibraryRecord single = library.find("single-flute-straight-bit").orElseThrow();
    double edges = single.facts().datum("flutes").low();
    double told = figure(single.id(), "Feed for each turn of the bit, one edge").low();
    assertEquals(edges * bite, told, 1e-12);
  }

  @Test
  void aLagScrewsPilotsAreTheSharesOfItsRootThatThePageTells() {
    LibraryRecord lag = library.find("lag-screw").orElseThrow();
    List<Facts> sizes = lag.facts().groups("sizes");
    assertFalse(sizes.isEmpty());
    for (Facts size : sizes) {
      double root = figure(lag.id(), "Root of the thread, " + size.words("size")).low();
      for (String wood : List.of("softwood", "hardwood")) {
        SourcedRange told =
            figure(lag.id(), "Pilot in " + wood + ", share of the root of the thread");
        double percent = 100 * size.datum("pilot-" + wood).low() / root;
        boolean within = percent > told.low() - 0.5 && percent < told.high() + 0.5;
        assertTrue(within, size.words("size") + " in " + wood + ": " + percent + " %");
      }
    }
  }

  @Test
  void aWideCutterStandsOnAStoutShank() {
    int wide = 0;
    for (LibraryRecord bit : library.of(Kind.ROUTER_BITS)) {
      if (bit.facts().datum("diameter").high() > WIDE_METRE) {
        wide++;
        assertTrue(bit.facts().datum("shank").low() > STOUT_SHANK_METRE, bit.id());
      }
    }
    assertTrue(wide > 0);
  }

  @Test
  void noBitOfTheTableAloneIsCalledOneForTheHand() {
    List<String> wrong = new ArrayList<>();
    for (LibraryRecord bit : library.of(Kind.ROUTER_BITS)) {
      if (!bit.facts().list("machines").contains("hand-router")) {
        for (String words : calledBy(bit)) {
          String lower = words.toLowerCase(Locale.ROOT);
          if (lower.contains("hand router") || lower.contains("handheld")) {
            wrong.add(bit.id() + ": " + words);
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static List<String> calledBy(LibraryRecord bit) {
    List<String> all = new ArrayList<>(bit.lay());
    bit.names().forEach(name -> all.add(name.text()));
    return all;
  }

  private static SourcedRange figure(String id, String name) {
    for (Fact.Group figure : library.find(id).orElseThrow().facts().figures()) {
      if (((Fact.Words) figure.facts().get("name")).text().equals(name)) {
        return ((Fact.Measure) figure.facts().get("figure")).datum();
      }
    }
    throw new AssertionError(id + " has no figure \"" + name + "\"");
  }
}
