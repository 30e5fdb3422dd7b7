package benchlore.generator.site;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** A small picture carries the rules and colours it needs, light and dark, and no others. */
class PictureStyleTest {
  private static final String CSS =
      """
      /* Colours. */
      :root {
        --drw-wood: #d9a86c;
        --drw-line: #6e4519;
        --drw-film: #d39a4e;
      }
      @media (prefers-color-scheme: dark) {
        :root { --drw-wood: #8a5f31; --drw-line: #e0b27a; --drw-film: #845a22; }
        .drw-crack { stroke: #000; }
      }
      .drw { display: block; }
      .drw path,
      .drw circle { stroke-linejoin: round; }
      .drw-wood { fill: var(--drw-wood); stroke: var(--drw-line); }
      .drw-film, .drw-film-deep { fill: var(--drw-film); }
      .drw-glyph .drw-wood { stroke-width: .8; }
      @media print { .drw-wood { fill: #fff; } }
      """;

  @Test
  void onlyWhatThePictureHoldsIsTakenAndPrintIsNot() {
    String picture = "<svg class=\"drw drw-glyph\"><path class=\"drw-wood\" d=\"M0 0\"/></svg>";
    assertEquals(
        "<svg class=\"drw drw-glyph\"><style>:root{--drw-wood:#d9a86c;--drw-line:#6e4519;}"
            + ".drw path{stroke-linejoin:round;}"
            + ".drw-wood{fill:var(--drw-wood);stroke:var(--drw-line);}"
            + ".drw-glyph .drw-wood{stroke-width:.8;}"
            + "@media (prefers-color-scheme: dark){:root{--drw-wood:#8a5f31;--drw-line:#e0b27a;}}"
            + "</style><path class=\"drw-wood\" d=\"M0 0\"/></svg>",
        new PictureStyle(CSS).styled(picture));
  }

  @Test
  void aRuleOfTheDarkSchemeComesAfterTheOneItTurns() {
    String picture = "<svg><path class=\"drw-crack drw-film-deep\" d=\"M0 0\"/></svg>";
    assertEquals(
        "<svg><style>:root{--drw-film:#d39a4e;}.drw-film-deep{fill:var(--drw-film);}"
            + "@media (prefers-color-scheme: dark){:root{--drw-film:#845a22;}"
            + ".drw-crack{stroke:#000;}}"
            + "</style><path class=\"drw-crack drw-film-deep\" d=\"M0 0\"/></svg>",
        new PictureStyle(CSS).styled(picture));
  }
}
