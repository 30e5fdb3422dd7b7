package benchlore.generator.browser;

import java.io.IOException;
import java.io.StringReader;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import nu.validator.htmlparser.common.XmlViolationPolicy;
import nu.validator.htmlparser.sax.HtmlParser;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** Reads every page and style sheet of a site once, then follows each address written in them. */
final class Links {
  private static final Set<String> ADDRESSES =
      Set.of("href", "src", "xlink:href", "poster", "data");
  private static final Set<String> PLACES =
      Set.of("for", "aria-labelledby", "aria-describedby", "aria-controls", "list", "headers");
  private static final Pattern URL = Pattern.compile("url\\(\\s*['\"]?([^'\")]+)['\"]?\\s*\\)");

  private static final Pattern COMMA = Pattern.compile(",");
  private static final Pattern SPACES = Pattern.compile("\\s+");
  // The addresses of a srcset; a data: address, which holds a comma, has no business in one.
  private static final Pattern CANDIDATE = Pattern.compile("(?:^|,)\\s*([^\\s,]+)");

  private final SiteFolder site;
  private final Set<String> files;
  private final Map<String, Set<String>> places = new HashMap<>();
  private final List<Written> written = new ArrayList<>();
  private final List<String> broken = new ArrayList<>();

  Links(SiteFolder site) {
    this.site = site;
    this.files = Set.copyOf(site.files());
    site.pages().forEach(this::readPage);
    for (String file : site.files()) {
      if (file.endsWith(".css")) {
        readUrls(file, site.read(file), "");
      }
    }
  }

  /** An address as it stands in a file, and how to show it in a report. */
  private record Written(String file, String address, String shown) {}

  int checked() {
    return written.size();
  }

  /** One line for each address that leads nowhere, and each identifier given twice. */
  List<String> broken() {
    List<String> all = new ArrayList<>(broken);
    for (Written link : written) {
      String fault = fault(link);
      if (!fault.isEmpty()) {
        all.add(link.file() + ": " + link.shown() + ": " + fault);
      }
    }
    return all;
  }

  private String fault(Written link) {
    if (link.address().startsWith("data:")) {
      return "";
    }
    URI target = URI.create("/" + link.file()).resolve(URI.create(link.address().trim()));
    boolean leaves =
        target.getScheme() != null
            || link.address().startsWith("/")
            || target.getPath().startsWith("/..");
    if (leaves) {
      return "leaves the folder";
    }
    String file = link.address().startsWith("#") ? link.file() : target.getPath().substring(1);
    if (!files.contains(file)) {
      return "no such file";
    }
    String place = target.getFragment();
    boolean found =
        place == null
            || place.isEmpty()
            || places.getOrDefault(file, Set.of()).contains(place)
            || saysWhatToShow(file, place);
    return found ? "" : "no such place in " + file;
  }

  /** Two kinds of page read their fragment: the finder its words, a comparison its records. */
  private boolean saysWhatToShow(String file, String fragment) {
    if (file.startsWith("compare/")) {
      String shelf = file.substring("compare/".length(), file.length() - ".html".length());
      return fragment.startsWith("of=")
          && COMMA
              .splitAsStream(fragment.substring("of=".length()))
              .allMatch(record -> files.contains(shelf + "/" + record + ".html"));
    }
    if (fragment.startsWith("begin=")) {
      String plan = fragment.substring("begin=".length());
      return file.equals("planner/finish.html") && files.contains("plans/" + plan + ".yaml");
    }
    return file.equals("index.html") && fragment.startsWith("find=");
  }

  private void readPage(String page) {
    HtmlParser parser = new HtmlParser(XmlViolationPolicy.ALLOW);
    parser.setContentHandler(new PageReader(page));
    try {
      parser.parse(new InputSource(new StringReader(site.read(page))));
    } catch (IOException | SAXException e) {
      throw new IllegalStateException("Cannot read " + page, e);
    }
  }

  private void readUrls(String file, String text, String wrap) {
    Matcher url = URL.matcher(text);
    while (url.find()) {
      String address = url.group(1).trim();
      written.add(new Written(file, address, wrap.isEmpty() ? address : url.group()));
    }
  }

  private final class PageReader extends DefaultHandler {
    private final String page;

    PageReader(String page) {
      this.page = page;
      places.put(page, new HashSet<>());
    }

    @Override
    public void startElement(String uri, String name, String qualified, Attributes attributes) {
      for (int i = 0; i < attributes.getLength(); i++) {
        attribute(attributes.getQName(i), attributes.getValue(i));
      }
    }

    private void attribute(String name, String value) {
      if (name.equals("id") && !places.get(page).add(value)) {
        broken.add(page + ": id " + value + " stands twice");
      }
      if (ADDRESSES.contains(name)) {
        written.add(new Written(page, value, value));
      } else if (name.equals("srcset")) {
        CANDIDATE
            .matcher(value)
            .results()
            .map(found -> found.group(1))
            .forEach(address -> written.add(new Written(page, address, address)));
      } else if (PLACES.contains(name)) {
        SPACES
            .splitAsStream(value.trim())
            .forEach(place -> written.add(new Written(page, "#" + place, name + " " + place)));
      } else {
        readUrls(page, value, name);
      }
    }
  }
}
