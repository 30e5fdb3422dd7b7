package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.page.JointsModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fills the page of every joint: drawn, with its rules of thumb and what makes it. */
final class JointsPage {
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

  JointsModel model() {
    List<JointsModel.Group> groups = new ArrayList<>();
    GROUPS.forEach((word, title) -> groups.add(new JointsModel.Group(word, title, joints(word))));
    return new JointsModel(groups);
  }

  private List<JointsModel.Joint> joints(String group) {
    List<JointsModel.Joint> found = new ArrayList<>();
    for (Facts row : joints.rows()) {
      if (row.words("shown-with").equals(group)) {
        found.add(
            new JointsModel.Joint(
                JointDrawings.form(row).word(),
                row.words("title"),
                JointDrawings.svg(row),
                row.words("good"),
                row.words("weak"),
                views.rows(row.group("sizes")),
                entries(row.list("related")),
                entries(row.list("needs"))));
      }
    }
    return found;
  }

  private List<LibraryRecord> entries(List<String> ids) {
    return ids.stream().map(id -> library.entries().get(id)).toList();
  }
}
