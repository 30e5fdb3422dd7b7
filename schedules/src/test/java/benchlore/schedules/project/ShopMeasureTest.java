package benchlore.schedules.project;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShopMeasureTest {
  @ParameterizedTest
  @CsvSource({
    "0.5, about ½ teaspoon",
    "5, about 1 teaspoon",
    "12, about 2½ teaspoons",
    "15, about 1 tablespoon",
    "33, about 2 tablespoons",
    "140, about 9½ tablespoons",
    "160, about ¾ cup",
    "300, about 1¼ cups",
    "990, about 4¼ cups",
  })
  void tellsAnAmountInWhatAShopMeasuresWith(double millilitre, String words) {
    assertEquals(words, ShopMeasure.of(millilitre / 1e6).orElseThrow().words());
  }

  @Test
  void nobodySpoonsALitre() {
    assertTrue(ShopMeasure.of(0.001).isEmpty());
  }

  @Test
  void isNeverOffByMoreThanHalfAStep() {
    for (double millilitre = 3; millilitre < 1000; millilitre += 1.7) {
      ShopMeasure told = ShopMeasure.of(millilitre / 1e6).orElseThrow();
      double size = told.working().inputs().get(1).quantity().value() * 1e6;
      double step = size > 100 ? size / 4 : size / 2;
      double back = told.quarters() / 4.0 * size;
      assertTrue(Math.abs(back - millilitre) <= step / 2 + 1e-9, millilitre + " told as " + back);
    }
  }
}
