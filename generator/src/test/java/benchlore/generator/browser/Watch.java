package benchlore.generator.browser;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.logging.Level;
import org.openqa.selenium.logging.LogEntries;
import org.openqa.selenium.logging.LogEntry;

/**
 * Reads a browser's two logs for what a page of the site must never do.
 *
 * <p>The console log holds errors, warnings and refusals of the content security policy; the
 * performance log holds every request as the browser's own debugging protocol tells it. A new
 * browser's own start page (a {@code chrome:} document) is not the site's doing and isn't counted.
 */
record Watch(String prefix) {
  private static final JsonMapper JSON = new JsonMapper();
  private static final List<String> ASKING =
      List.of(
          "Network.requestWillBeSent", "Network.webSocketCreated", "Network.webTransportCreated");

  Watch {
    Objects.requireNonNull(prefix, "prefix");
  }

  List<String> troubles(LogEntries console, LogEntries performance) {
    List<String> troubles = new ArrayList<>();
    for (LogEntry entry : console) {
      if (entry.getLevel().intValue() >= Level.WARNING.intValue()) {
        troubles.add("console " + entry.getLevel() + ": " + entry.getMessage());
      }
    }
    for (String address : requests(performance)) {
      if (!stays(address)) {
        troubles.add("request outside the site: " + address);
      }
    }
    return troubles;
  }

  static List<String> requests(LogEntries performance) {
    List<String> addresses = new ArrayList<>();
    for (LogEntry entry : performance) {
      JsonNode message = parse(entry.getMessage()).path("message");
      JsonNode params = message.path("params");
      boolean ofThePage = !params.path("documentURL").asText().startsWith("chrome://");
      if (ofThePage && ASKING.contains(message.path("method").asText())) {
        String address = params.path("request").path("url").asText();
        addresses.add(address.isEmpty() ? params.path("url").asText() : address);
      }
    }
    return addresses;
  }

  private boolean stays(String address) {
    return (address.startsWith(prefix) && !address.contains("/../")) || address.startsWith("data:");
  }

  private static JsonNode parse(String message) {
    try {
      return JSON.readTree(message);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Not JSON: " + message, e);
    }
  }
}
