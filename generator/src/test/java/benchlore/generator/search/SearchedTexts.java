package benchlore.generator.search;

import benchlore.generator.content.Library;
import java.util.List;

/** The texts the index is made of, for a test that makes it again in a browser. */
public final class SearchedTexts {
  private SearchedTexts() {}

  /** Every record's texts, the most telling field first, in the order of the records. */
  public static List<List<String>> of(Library library) {
    return library.entries().values().stream().map(FinderData::texts).toList();
  }
}
