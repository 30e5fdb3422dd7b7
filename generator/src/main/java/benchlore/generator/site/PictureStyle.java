package benchlore.generator.site;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rules of the drawings' style sheet that one picture needs. A picture shown by {@code <img>}
 * sees no style sheet of its page, so it carries them itself: the same colours, light and dark.
 */
final class PictureStyle {
  private static final String DARK = "@media (prefers-color-scheme: dark)";
  private static final String VARIABLES = ":root";
  private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
  private static final Pattern RULE =
      Pattern.compile("(@media[^{]*)\\{|([^{}@]+)\\{([^{}]*)\\}|\\}");
  private static final Pattern CLASSES = Pattern.compile(" class=\"([^\"]*)\"");
  private static final Pattern ELEMENT = Pattern.compile("<([a-z]+)");
  private static final Pattern VARIABLE = Pattern.compile("(--[a-z-]+): ([^;]+);");
  private static final Pattern USE = Pattern.compile("var\\((--[a-z-]+)\\)");

  /** How a whole drawing lies on a page: not the picture's own affair. */
  private static final Set<String> FRAMES = Set.of(".drw", ".drw-glyph");

  /**
   * A rule.
   *
   * @param media the condition it stands under, or empty
   * @param selectors what it holds for
   * @param declarations what it says
   */
  private record Rule(String media, List<String> selectors, String declarations) {}

  private final List<Rule> rules = new ArrayList<>();

  /** Reads the style sheet. */
  PictureStyle(String css) {
    String media = "";
    Matcher rule = RULE.matcher(COMMENT.matcher(css).replaceAll(""));
    while (rule.find()) {
      if (rule.group(1) != null) {
        media = rule.group(1).trim();
      } else if (rule.group(2) == null) {
        media = "";
      } else {
        List<String> selectors = List.of(rule.group(2).trim().split("\\s*,\\s*", -1));
        rules.add(new Rule(media, selectors, rule.group(3).trim()));
      }
    }
  }

  /** The picture with what it needs of the style sheet. */
  String styled(String svg) {
    int head = svg.indexOf('>') + 1;
    Set<String> marks = marks(svg);
    String light = rules("", marks);
    String dark = rules(DARK, marks);
    Set<String> used = new TreeSet<>();
    USE.matcher(light + dark).results().map(m -> m.group(1)).forEach(used::add);
    String style = variables("", used) + light + DARK + "{" + variables(DARK, used) + dark + "}";
    return svg.substring(0, head) + "<style>" + style + "</style>" + svg.substring(head);
  }

  /** Every class and element of a picture, as a selector names them. */
  private static Set<String> marks(String svg) {
    Set<String> marks = new LinkedHashSet<>();
    for (MatchResult list : CLASSES.matcher(svg).results().toList()) {
      for (String name : list.group(1).split(" ", -1)) {
        marks.add("." + name);
      }
    }
    ELEMENT.matcher(svg).results().map(m -> m.group(1)).forEach(marks::add);
    return marks;
  }

  private String rules(String media, Set<String> marks) {
    StringBuilder out = new StringBuilder();
    for (Rule rule : rules) {
      List<String> selectors =
          rule.selectors().stream().filter(selector -> holds(selector, marks)).toList();
      if (rule.media().equals(media) && !selectors.isEmpty()) {
        out.append(String.join(",", selectors)).append('{');
        out.append(pressed(rule.declarations())).append('}');
      }
    }
    return out.toString();
  }

  private static boolean holds(String selector, Set<String> marks) {
    List<String> parts = List.of(selector.split(" ", -1));
    return marks.containsAll(parts) && !FRAMES.contains(parts.get(parts.size() - 1));
  }

  private String variables(String media, Set<String> used) {
    StringBuilder out = new StringBuilder();
    for (Rule rule : rules) {
      if (rule.media().equals(media) && rule.selectors().equals(List.of(VARIABLES))) {
        for (MatchResult v : VARIABLE.matcher(rule.declarations()).results().toList()) {
          if (used.contains(v.group(1))) {
            out.append(v.group(1)).append(':').append(v.group(2)).append(';');
          }
        }
      }
    }
    return VARIABLES + "{" + out + "}";
  }

  private static String pressed(String declarations) {
    return declarations.replaceAll("\\s*([:;])\\s*", "$1");
  }
}
