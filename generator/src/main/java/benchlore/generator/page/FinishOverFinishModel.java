package benchlore.generator.page;

import benchlore.generator.content.LibraryRecord;
import java.util.List;

/**
 * What may go over each finish.
 *
 * @param under one a finish that is already there
 */
public record FinishOverFinishModel(List<Under> under) implements PageModel {
  /** Where the page stands, from the site's root. */
  public static final String URL = "tables/finish-over-finish.html";

  /** Copies the list. */
  public FinishOverFinishModel {
    under = List.copyOf(under);
  }

  @Override
  public String template() {
    return "finish-over-finish";
  }

  /**
   * A finish that is already there.
   *
   * @param entry its record
   * @param groups what may go over it and what not
   */
  public record Under(LibraryRecord entry, List<Group> groups) {
    /** Copies the list. */
    public Under {
      groups = List.copyOf(groups);
    }
  }

  /**
   * Finishes of one verdict with one reason.
   *
   * @param verdict its name in style sheets
   * @param words the verdict
   * @param after HTML: after how long; empty where that is not known
   * @param why the reasons
   * @param uppers which
   */
  public record Group(
      String verdict, String words, String after, String why, List<LibraryRecord> uppers) {
    /** Copies the list. */
    public Group {
      uppers = List.copyOf(uppers);
    }
  }
}
