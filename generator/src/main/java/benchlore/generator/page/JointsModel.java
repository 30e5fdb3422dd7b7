package benchlore.generator.page;

import benchlore.generator.content.LibraryRecord;
import java.util.List;

/**
 * Every joint on one page: drawn, with its rules of thumb and what makes it.
 *
 * @param groups joints of a kind of work
 */
public record JointsModel(List<Group> groups) implements PageModel {
  /** Where the page stands, from the site's root. */
  public static final String URL = "tables/joints.html";

  /** Copies the list. */
  public JointsModel {
    groups = List.copyOf(groups);
  }

  @Override
  public String template() {
    return "joints";
  }

  /**
   * Joints of a kind of work.
   *
   * @param id in the page
   * @param title heading
   * @param joints which
   */
  public record Group(String id, String title, List<Joint> joints) {
    /** Copies the list. */
    public Group {
      joints = List.copyOf(joints);
    }
  }

  /**
   * A joint.
   *
   * @param id in the page
   * @param title what it is called
   * @param svg its drawing
   * @param good what it is good for
   * @param weak how it fails
   * @param rows its rules of thumb
   * @param related records to read
   * @param needs records of what makes it
   */
  public record Joint(
      String id,
      String title,
      String svg,
      String good,
      String weak,
      List<FactRow> rows,
      List<LibraryRecord> related,
      List<LibraryRecord> needs) {
    /** Copies the lists. */
    public Joint {
      rows = List.copyOf(rows);
      related = List.copyOf(related);
      needs = List.copyOf(needs);
    }
  }
}
