package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Every joint on one page: drawn, with its rules of thumb and what makes it. */
final class JointsPage {
  static final String URL = "tables/joints.html";
  private static final String ROOT = "../";
  private static final Map<String, String> GROUPS = groups();

  private final Library library;
  private final JointDrawings joints;
  private final FactViews views;

  JointsPage(Library library, JointDrawings joints) {
    this.library = library;
    this.joints = joints;
    this.views = new FactViews(library, new Markdown(library, ROOT), ROOT);
  }

  private static Map<String, String> groups() {
    Map<String, String> groups = new LinkedHashMap<>();
    groups.put("edges", "Boards edge to edge and end to end");
    groups.put("frames", "Frames and tops");
    groups.put("boxes", "Boxes and cases");
    return groups;
  }

  /** Values for the template {@code joints}. */
  Map<String, Object> values() {
    List<Map<String, Object>> groups = new ArrayList<>();
    GROUPS.forEach(
        (word, title) -> groups.add(Map.of("id", word, "title", title, "joints", joints(word))));
    Map<String, Object> values = new HashMap<>();
    values.put("root", ROOT);
    values.put("groups", groups);
    return values;
  }

  private List<Map<String, Object>> joints(String group) {
    List<Map<String, Object>> found = new ArrayList<>();
    for (Facts row : joints.rows()) {
      if (row.words("shown-with").equals(group)) {
        found.add(
            Map.of(
                "id", JointDrawings.form(row).word(),
                "title", row.words("title"),
                "svg", JointDrawings.svg(row),
                "good", row.words("good"),
                "weak", row.words("weak"),
                "rows", views.rows(row.group("sizes")),
                "related", entries(row.list("related")),
                "needs", entries(row.list("needs"))));
      }
    }
    return found;
  }

  private List<LibraryRecord> entries(List<String> ids) {
    return ids.stream().map(id -> library.entries().get(id)).toList();
  }
}
