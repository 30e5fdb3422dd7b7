package benchlore.generator.page;

import benchlore.generator.content.LibraryRecord;
import java.util.List;
import java.util.Set;

/**
 * The page of one record.
 *
 * @param entry which
 * @param names what it is called, each with where it is said
 * @param text its prose
 * @param drawings its drawings, with those of the joints it belongs to
 * @param work what is done with it, or about it
 * @param facts what is known of it
 * @param links where to go from it
 * @param pictures ids of the records with a small picture
 */
public record RecordModel(
    LibraryRecord entry,
    List<String> names,
    Text text,
    List<CaptionedDrawing> drawings,
    Work work,
    Facts facts,
    Links links,
    Set<String> pictures)
    implements PageModel {
  /** Copies the collections. */
  public RecordModel {
    names = List.copyOf(names);
    drawings = List.copyOf(drawings);
    pictures = Set.copyOf(pictures);
  }

  @Override
  public String template() {
    return "record";
  }

  /**
   * A record's prose, all of it HTML.
   *
   * @param does what it does
   * @param looks what it looks like
   * @param use how to use it
   * @param wrong how it goes wrong, a line each
   * @param safety what to take care of, a line each
   * @param body anything else; empty where there is nothing
   */
  public record Text(
      String does, String looks, String use, List<String> wrong, List<String> safety, String body) {
    /** Copies the lists. */
    public Text {
      wrong = List.copyOf(wrong);
      safety = List.copyOf(safety);
    }
  }

  /**
   * What is done with a record's thing, or about it.
   *
   * @param steps of a technique
   * @param causes of a fault
   * @param mistaken what it is mistaken for
   */
  public record Work(List<Step> steps, List<Cause> causes, List<Mistaken> mistaken) {
    /** Copies the lists. */
    public Work {
      steps = List.copyOf(steps);
      causes = List.copyOf(causes);
      mistaken = List.copyOf(mistaken);
    }
  }

  /**
   * A step of a technique, all of it HTML.
   *
   * @param action what to do
   * @param why empty where nothing is written, as the caution
   * @param caution what can hurt or spoil
   */
  public record Step(String action, String why, String caution) {}

  /**
   * What a thing is mistaken for.
   *
   * @param id of the other's record; empty where there is none, as url
   * @param title what the other is called
   * @param url its page, from this one
   * @param compare the two side by side; empty where they are not of one kind
   * @param tell HTML: how to tell one from the other
   */
  public record Mistaken(String id, String title, String url, String compare, String tell) {}

  /**
   * What is known of a record's thing.
   *
   * @param rows what fits a row: figures, words, yes or no
   * @param sections prose
   * @param tables lists of groups
   */
  public record Facts(List<FactRow> rows, List<Section> sections, List<Table> tables) {
    /** Copies the lists. */
    public Facts {
      rows = List.copyOf(rows);
      sections = List.copyOf(sections);
      tables = List.copyOf(tables);
    }
  }

  /**
   * A fact told in prose.
   *
   * @param label heading
   * @param html content
   */
  public record Section(String label, String html) {}

  /**
   * A list of groups as a table.
   *
   * @param label caption
   * @param heads column heads
   * @param rows cells, HTML
   */
  public record Table(String label, List<String> heads, List<List<String>> rows) {
    /** Copies the lists. */
    public Table {
      heads = List.copyOf(heads);
      rows = List.copyOf(rows);
    }
  }

  /**
   * Where to go from a record.
   *
   * @param goesWith its places in the tables
   * @param needs what one needs for it
   * @param related what it names as related, and what names it
   */
  public record Links(
      List<TablePlace> goesWith, List<LibraryRecord> needs, List<LibraryRecord> related) {
    /** Copies the lists. */
    public Links {
      goesWith = List.copyOf(goesWith);
      needs = List.copyOf(needs);
      related = List.copyOf(related);
    }
  }

  /**
   * A record's place in a table.
   *
   * @param link to that place
   * @param counts how many of each verdict it has there
   */
  public record TablePlace(Link link, String counts) {}
}
