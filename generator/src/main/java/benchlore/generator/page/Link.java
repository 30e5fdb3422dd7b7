package benchlore.generator.page;

/**
 * A link to another page.
 *
 * @param url from the site's root
 * @param words what is read there
 */
public record Link(String url, String words) {
  /** Refuses a link that leads nowhere or says nothing. */
  public Link {
    if (url.isEmpty() || words.isEmpty()) {
      throw new IllegalArgumentException("url and words must not be empty: " + url + words);
    }
  }
}
