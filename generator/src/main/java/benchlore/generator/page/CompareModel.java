package benchlore.generator.page;

import benchlore.generator.content.Kind;

/**
 * The page that sets records of one kind side by side.
 *
 * @param kind which
 */
public record CompareModel(Kind kind) implements PageModel {
  /** Where a kind's page stands, from the site's root. */
  public static String url(Kind kind) {
    return "compare/" + kind.folder() + ".html";
  }

  @Override
  public String template() {
    return "compare";
  }
}
