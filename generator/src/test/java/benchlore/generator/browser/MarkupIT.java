package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Every page against the HTML standard, drawings inside it included, by the Nu checker in this
 * process and without a network. Errors, warnings and remarks all fail; there is no list of
 * excuses.
 *
 * <p>The checker also holds each written address against the page's own security policy. For that
 * it needs an address of the page, so it is told one that can't exist.
 */
class MarkupIT {
  private static final String SITE = "https://benchlore.invalid/";

  private final List<String> messages = new ArrayList<>();
  private SimpleDocumentValidator checker;

  @BeforeEach
  void setUpChecker() throws Exception {
    ErrorHandler handler = new Collector();
    checker = new SimpleDocumentValidator(true, false, false);
    checker.setUpMainSchema(EmbeddedValidator.SCHEMA_URL, handler);
    checker.setUpValidatorAndParsers(handler, true, false);
  }

  @Test
  void everyPageIsCorrectMarkup() throws IOException, SAXException {
    SiteFolder site = SiteFolder.fromBuild();
    for (String page : site.pages()) {
      check(page, site.read(page));
    }
    assertEquals("", String.join("\n", messages));
  }

  @Test
  void theCheckerNoticesFaultsInPageDrawingAndPolicy() throws IOException, SAXException {
    check(
        "a/bad.html",
        """
        <!DOCTYPE html><html lang="en"><head><title>Bad</title>
        <meta http-equiv="Content-Security-Policy" content="img-src 'self'"></head>
        <body><p><div>a</div><svg><rect widht="3"/><blob/></svg></p><section>b</section>
        <img src="https://wood.example/a.png" alt=""></body></html>
        """);
    String found = String.join("\n", messages);
    assertTrue(found.contains("a/bad.html:3: error: No “p” element in scope"), found);
    assertTrue(found.contains("error: Attribute “widht” not allowed"), found);
    assertTrue(found.contains("error: Element “blob” not allowed"), found);
    assertTrue(found.contains("warning: Section lacks heading."), found);
    assertTrue(found.contains("warning: Resource violates Content Security Policy"), found);
  }

  private void check(String page, String html) throws IOException, SAXException {
    InputSource source = new InputSource(new StringReader(html));
    source.setSystemId(SITE + page);
    checker.checkHtmlInputSource(source);
  }

  private final class Collector implements ErrorHandler {
    @Override
    public void warning(SAXParseException fault) {
      add("warning", fault);
    }

    @Override
    public void error(SAXParseException fault) {
      add("error", fault);
    }

    @Override
    public void fatalError(SAXParseException fault) {
      add("fatal", fault);
    }

    private void add(String severity, SAXParseException fault) {
      String page = String.valueOf(fault.getSystemId()).replace(SITE, "");
      messages.add(
          page + ":" + fault.getLineNumber() + ": " + severity + ": " + fault.getMessage());
    }
  }
}
