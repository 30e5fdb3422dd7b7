package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import nu.validator.client.EmbeddedValidator;
import nu.validator.client.EmbeddedValidator.OutputFormat;
import org.junit.jupiter.api.Test;
import org.xml.sax.SAXException;

/** Every page against the HTML standard, by the Nu checker in this process; warnings fail too. */
class MarkupIT {
  private static final JsonMapper JSON = new JsonMapper();

  /**
   * The one message let pass: the checker is not told a page's address, so to it no file is 'self'.
   * The browser itself judges the policy in {@link PagesIT}.
   */
  private static final Pattern NO_ADDRESS =
      Pattern.compile(
          "info: Resource violates Content Security Policy \\(meta tag\\): "
              + "(external stylesheet|external script|image)"
              + " “(\\.\\./)?(css|js|vendor|drawings)/[a-z-]+\\.(css|js|svg)” blocked by .*");

  @Test
  void everyPageIsCorrectMarkup() {
    SiteFolder site = SiteFolder.fromBuild();
    List<String> messages =
        site.pages().parallelStream()
            .flatMap(page -> messages(site.read(page)).stream().map(m -> page + ":" + m))
            .toList();
    assertEquals("", String.join("\n", messages));
  }

  @Test
  void theCheckerNoticesFaultsInHtmlAndInDrawings() {
    String found =
        String.join(
            "\n",
            messages(
                """
                <!DOCTYPE html><html lang="en"><head><title>Bad</title></head>
                <body><p><div>a</div><svg><rect widht="3"/><blob/></svg></p></body></html>
                """));
    assertTrue(found.contains("No “p” element in scope"), found);
    assertTrue(found.contains("Element “blob” not allowed"), found);
    assertTrue(found.contains("Attribute “widht” not allowed"), found);
  }

  private static List<String> messages(String html) {
    EmbeddedValidator checker = new EmbeddedValidator();
    checker.setOutputFormat(OutputFormat.JSON);
    checker.setForceHTML(true);
    checker.setNoLangDetect(true);
    List<String> messages = new ArrayList<>();
    try {
      String report =
          checker.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
      for (JsonNode message : JSON.readTree(report).required("messages")) {
        if (!NO_ADDRESS.matcher(said(message)).matches()) {
          messages.add(line(message));
        }
      }
    } catch (IOException | SAXException e) {
      throw new AssertionError("The checker itself failed", e);
    }
    return messages;
  }

  private static String line(JsonNode message) {
    return message.path("lastLine").asInt()
        + ": "
        + said(message)
        + " | "
        + message.path("extract").asText().replaceAll("\\s+", " ");
  }

  private static String said(JsonNode message) {
    return message.path("type").asText() + ": " + message.path("message").asText();
  }
}
