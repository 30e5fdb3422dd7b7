package benchlore.generator.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryLoader;
import benchlore.generator.content.LibraryRecord;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A record's directions say what its own text says, no more and nothing else. */
class DirectionsTest {
  private static final Path CONTENT = Path.of("../content");
  private static final Pattern FIGURE =
      Pattern.compile(
          "(?i)\\b(P?\\d+|two|three|four|five|six|eight|ten|fifteen|twenty|half|third|tenth|fifth"
              + "|quarter|twice|minutes?|hours?|overnight|weeks?)\\b");
  private static final int MOST_WORDS = 26;

  private final Library library;

  DirectionsTest() throws IOException {
    this.library = LibraryLoader.load(CONTENT).value().orElseThrow();
  }

  private List<LibraryRecord> records() {
    List<LibraryRecord> all = new ArrayList<>(library.of(Kind.FINISHES));
    all.addAll(library.of(Kind.ADHESIVES));
    return all;
  }

  private static List<String> said(LibraryRecord entry, String... keys) {
    List<String> said = new ArrayList<>();
    for (String key : keys) {
      entry.facts().find(key).ifPresent(fact -> said.add(((Fact.Words) fact).text()));
    }
    return said;
  }

  private static List<String> all(LibraryRecord entry) {
    return said(entry, "begin", "put-on", "sprayed", "afterwards", "look-for");
  }

  private static String file(LibraryRecord entry, Kind kind) throws IOException {
    return Files.readString(
        CONTENT.resolve(kind.name().toLowerCase(Locale.ROOT)).resolve(entry.id() + ".yaml"));
  }

  /** The record without its directions. */
  private String text(LibraryRecord entry) throws IOException {
    Kind kind =
        library.find(Kind.FINISHES, entry.id()).isPresent() ? Kind.FINISHES : Kind.ADHESIVES;
    return file(entry, kind)
        .replaceAll("(?m)^  (begin|put-on|sprayed|afterwards|look-for): .*$", "")
        .toLowerCase(Locale.ROOT);
  }

  @Test
  void noFigureStandsInThemThatTheRecordDoesNotGive() throws IOException {
    List<String> strangers = new ArrayList<>();
    for (LibraryRecord entry : records()) {
      String text = text(entry);
      for (String sentence : all(entry)) {
        Matcher figures = FIGURE.matcher(sentence);
        while (figures.find()) {
          String figure = figures.group().toLowerCase(Locale.ROOT).replaceAll("s$", "");
          boolean again = figure.equals("twice") && text.matches("(?s).*(two|second) coats?.*");
          if (!text.contains(figure) && !again) {
            strangers.add(entry.id() + ": " + figures.group() + " in \"" + sentence + "\"");
          }
        }
      }
    }
    assertEquals(List.of(), strangers);
  }

  @Test
  void eachIsOneShortSentence() {
    List<String> wrong = new ArrayList<>();
    for (LibraryRecord entry : records()) {
      for (String sentence : all(entry)) {
        boolean long_ = sentence.split(" ").length > MOST_WORDS;
        boolean open =
            !sentence.endsWith(".") || sentence.substring(0, sentence.length() - 1).contains(". ");
        if (long_ || open) {
          wrong.add(entry.id() + ": " + sentence);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void whatSoaksInIsAlwaysWipedOffAndAFilmNeverDry() {
    for (LibraryRecord entry : library.of(Kind.FINISHES)) {
      Facts facts = entry.facts();
      String done = String.join(" ", said(entry, "put-on", "afterwards")).toLowerCase(Locale.ROOT);
      if (facts.words("role").equals("penetrating")) {
        assertTrue(done.contains("wipe"), entry.id() + " is never wiped off");
      }
      boolean wiped =
          Pattern.compile("wip(e|ed) (all|every|off everything|dry)").matcher(done).find();
      if (facts.words("role").equals("film")) {
        assertTrue(!wiped, entry.id() + " builds a film and is wiped off");
      }
    }
  }

  @Test
  void theFirstCoatIsThinnedWhereTheTextThinsIt() throws IOException {
    Pattern thins =
        Pattern.compile("(thin|cut) the\\s+first\\s+coat|for\\s+the\\s+first\\s+coat on open wood");
    for (LibraryRecord entry : library.of(Kind.FINISHES)) {
      boolean begins =
          said(entry, "begin").stream()
              .anyMatch(s -> s.matches("(?s).*\\b([Tt]hin|[Cc]ut) this coat alone.*"));
      assertEquals(thins.matcher(text(entry)).find(), begins, entry.id());
    }
  }

  @Test
  void nothingIsShakenThatIsStirred() {
    for (LibraryRecord entry : records()) {
      for (String sentence : all(entry)) {
        String words = sentence.toLowerCase(Locale.ROOT);
        boolean shakes = words.contains("shake") && !words.matches(".*(never|don't) shake.*");
        assertTrue(
            !shakes || Set.of("waxed-shellac", "spray-contact").contains(entry.id()), sentence);
      }
    }
  }

  @Test
  void aBlushThatHasToBeWashedOffIsWashedOff() throws IOException {
    for (LibraryRecord entry : records()) {
      boolean washes =
          Pattern.compile("wash (off|a greasy|the greasy)[^.]*(bloom|film)?")
                  .matcher(text(entry))
                  .find()
              && said(entry, "family").toString().contains("epoxy");
      String afterwards = String.join(" ", said(entry, "afterwards"));
      assertTrue(!washes || afterwards.contains("ash"), entry.id());
    }
  }
}
