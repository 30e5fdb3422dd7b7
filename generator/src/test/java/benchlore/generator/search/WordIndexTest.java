package benchlore.generator.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class WordIndexTest {
  @Test
  void wordsAreSmallLettersAndFiguresWithoutAccents() {
    assertEquals(
        List.of("creme", "brulee", "carpenters", "1", "4", "in", "o", "flute"),
        Tokens.of("Crème  brûlée: carpenter’s 1/4 in. O-flute"));
    assertEquals(List.of(), Tokens.of(" … 木 "));
  }

  @Test
  void aPlaceIsTheStepFromTheRecordBeforeAndTheMostTellingField() {
    WordIndex index = new WordIndex(2);
    index.add(0, List.of("oak", "oak and ash"));
    index.add(3, List.of("ash", "-"));
    index.add(100, List.of("-", "ash"));
    assertEquals("and ash oak", index.words());
    // and: 0*2+1. ash: 0*2+1, 3*2+0, 97*2+1 = 195 = 3 + 6*32. oak: 0*2+0.
    assertEquals("1 16Z6 0", index.places());
    assertTrue(index.holds("ash"));
    assertFalse(index.holds("elm"));
  }
}
