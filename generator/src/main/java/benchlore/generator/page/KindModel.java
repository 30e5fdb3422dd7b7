package benchlore.generator.page;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.Prose;
import benchlore.generator.key.KeyQuestions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The list of one kind's records.
 *
 * @param kind which
 * @param links other ways to find one of them
 * @param cards one a record
 */
public record KindModel(Kind kind, List<Link> links, List<Card> cards) implements PageModel {
  /**
   * A record in the list.
   *
   * @param entry the record
   * @param does what it does, without links or marks
   * @param picture whether it has a small picture
   */
  public record Card(LibraryRecord entry, String does, boolean picture) {}

  /** Copies the lists. */
  public KindModel {
    links = List.copyOf(links);
    cards = List.copyOf(cards);
  }

  /**
   * Makes the list of a kind.
   *
   * @param kind which
   * @param library every record
   * @param pictured ids of the records with a small picture
   */
  public static KindModel of(Kind kind, Library library, Set<String> pictured) {
    List<Card> cards = new ArrayList<>();
    for (LibraryRecord entry : library.of(kind)) {
      String does = Prose.plain(entry.text().does());
      cards.add(new Card(entry, does, pictured.contains(entry.id())));
    }
    return new KindModel(kind, links(kind, !cards.isEmpty()), cards);
  }

  @Override
  public String template() {
    return "kind";
  }

  private static List<Link> links(Kind kind, boolean some) {
    List<Link> links = new ArrayList<>();
    if (kind == Kind.DEFECTS) {
      links.add(new Link("faults.html", "What went wrong? Causes and cures"));
    }
    if (some && !KeyQuestions.of(kind).isEmpty()) {
      links.add(new Link(KeyModel.url(kind), "Find it by simple questions"));
    }
    links.add(new Link(CompareModel.url(kind), "Compare side by side"));
    switch (kind) {
      case FINISHES ->
          links.add(new Link("tables/finish-over-finish.html", "What may go over what"));
      case TECHNIQUES -> links.add(new Link("tables/joints.html", "Joints, drawn apart"));
      case ROUTER_BITS -> links.add(new Link("tables/edge-profiles.html", "Edge profiles"));
      case SHEENS -> links.add(new Link("tables/sheens.html", "All of them side by side"));
      default -> {
        // The other kinds have no table of their own.
      }
    }
    return links;
  }
}
