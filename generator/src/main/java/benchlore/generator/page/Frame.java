package benchlore.generator.page;

import benchlore.generator.content.Kind;
import java.util.List;

/**
 * What every page is given besides its own model: where it stands, and what its head lists.
 *
 * @param root path from the page to the site's root: empty, or {@code ../} a folder
 * @param here the first folder of the page's path; empty for a page at the root
 * @param allKinds every kind of record, as the head lists them
 * @param canPlan whether the site has planners
 */
public record Frame(String root, String here, List<Kind> allKinds, boolean canPlan) {
  /** Copies the list. */
  public Frame {
    allKinds = List.copyOf(allKinds);
  }

  /**
   * Makes the frame of a page.
   *
   * @param path of the page, from the site's root, with forward slashes
   * @param canPlan whether the site has planners
   */
  public static Frame of(String path, boolean canPlan) {
    int folders = (int) path.chars().filter(c -> c == '/').count();
    String here = folders == 0 ? "" : path.substring(0, path.indexOf('/'));
    return new Frame("../".repeat(folders), here, List.of(Kind.values()), canPlan);
  }
}
