package benchlore.generator.page;

import benchlore.generator.content.LibraryRecord;
import java.util.List;
import java.util.Set;

/**
 * Every fault on one page, with its causes and what to do.
 *
 * @param pictures ids of the records with a small picture
 * @param index the faults by when they showed, then by where
 * @param rows the questions that narrow them down
 * @param faults all of them
 */
public record FaultsModel(
    Set<String> pictures, List<Group> index, List<Question> rows, List<Fault> faults)
    implements PageModel {
  /** Where the page stands, from the site's root. */
  public static final String URL = "faults.html";

  /** Copies the collections. */
  public FaultsModel {
    pictures = Set.copyOf(pictures);
    index = List.copyOf(index);
    rows = List.copyOf(rows);
    faults = List.copyOf(faults);
  }

  @Override
  public String template() {
    return "faults";
  }

  /**
   * Faults that showed at one time.
   *
   * @param words when
   * @param places by where they show
   */
  public record Group(String words, List<Place> places) {
    /** Copies the list. */
    public Group {
      places = List.copyOf(places);
    }
  }

  /**
   * Faults that show in one place.
   *
   * @param words where
   * @param faults which
   */
  public record Place(String words, List<LibraryRecord> faults) {
    /** Copies the list. */
    public Place {
      faults = List.copyOf(faults);
    }
  }

  /**
   * A row of toggles.
   *
   * @param name in the page's address
   * @param question what is asked
   * @param answers what can be pressed
   */
  public record Question(String name, String question, List<Toggle> answers) {
    /** Copies the list. */
    public Question {
      answers = List.copyOf(answers);
    }
  }

  /**
   * An answer to press.
   *
   * @param word in the page's address
   * @param words what people read
   * @param picture file of a picture; empty where there is none
   */
  public record Toggle(String word, String words, String picture) {}

  /**
   * A fault.
   *
   * @param entry its record
   * @param found what the page's script finds it by
   * @param shown when and where it shows, in words
   * @param symptom HTML
   * @param looks HTML: what it looks like
   * @param causes likeliest first
   */
  public record Fault(
      LibraryRecord entry,
      Found found,
      String shown,
      String symptom,
      String looks,
      List<Cause> causes) {
    /** Copies the list. */
    public Fault {
      causes = List.copyOf(causes);
    }
  }

  /**
   * What the page's script finds a fault by.
   *
   * @param when it showed: words of the closed list, with spaces between, as the next two
   * @param where it shows
   * @param see what one sees
   * @param names of the fault, with commas between
   * @param lay what people call it, with commas between
   */
  public record Found(String when, String where, String see, String names, String lay) {}
}
