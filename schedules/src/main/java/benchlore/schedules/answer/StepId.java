package benchlore.schedules.answer;

import benchlore.schedules.quantity.ComponentException;
import java.util.Objects;
import java.util.Optional;

/**
 * A step of a project by what is done in it, so that cautions, progress and pages need not read its
 * name.
 *
 * @param task what is done
 * @param number which, from 1, of a task that is done several times; 0 of one that is done once
 */
public record StepId(Task task, int number) {
  /** What can be done in a project, in the order of the work. */
  public enum Task {
    /** The boards take up the shop's air. */
    SETTLE("settle", false),
    /** Edges are jointed and clamped up without glue. */
    DRY_CLAMP("dry-clamp", false),
    /** Blanks are glued up. */
    GLUE("glue", true),
    /** The clamps come off them. */
    CLAMPS_OFF("clamps-off", true),
    /** Glue water spreads before the joints are cut. */
    WAIT_JOINTS("wait-joints", false),
    /** Parts are cut and shaped. */
    MACHINE("machine", false),
    /** Bare wood is sanded. */
    SAND("sand", false),
    /** Wetted wood dries. */
    GRAIN_DRY("grain-dry", false),
    /** Raised grain comes off. */
    KNOCK_OFF("knock-off", false),
    /** Pores are filled. */
    FILL_PORES("fill-pores", false),
    /** The filler dries. */
    FILLER_DRY("filler-dry", false),
    /** The filler is sanded flat. */
    LEVEL_FILLER("level-filler", false),
    /** Every part is tried in its place. */
    DRY_FIT("dry-fit", false),
    /** The gaps of moving parts are looked at once more, sanded. */
    FIT_CHECK("fit-check", false),
    /** A coat is scuffed before the next. */
    SCUFF("scuff", true),
    /** A coat goes on. */
    COAT("coat", true),
    /** The last coat dries. */
    DRY("dry", false),
    /** It cures before it is rubbed out. */
    CURE_BEFORE_RUBBING("cure-before-rubbing", false),
    /** The film is rubbed to its sheen. */
    RUB_OUT("rub-out", false),
    /** The parts are fitted. */
    INSTALL("install", false),
    /** The film cures in use. */
    CURE("cure", false);

    private final String word;
    private final boolean numbered;

    Task(String word, boolean numbered) {
      this.word = word;
      this.numbered = numbered;
    }

    /** The step of this task, which is done once. */
    public StepId once() {
      return new StepId(this, 0);
    }

    /** The step of this task with this number, from 1. */
    public StepId number(int number) {
      return new StepId(this, number);
    }
  }

  private static final int MOST_DIGITS = 4;

  /** Refuses a number where the task is done once, or none where it is done several times. */
  public StepId {
    Objects.requireNonNull(task, "task");
    if (task.numbered ? number < 1 : number != 0) {
      throw new ComponentException("number", "must suit the task, was " + number);
    }
  }

  /** The step of this name, as plan files hold it: "coat-2", "sand"; empty if there is none. */
  public static Optional<StepId> parse(String name) {
    for (Task task : Task.values()) {
      if (!task.numbered && name.equals(task.word)) {
        return Optional.of(task.once());
      }
      if (task.numbered && name.startsWith(task.word + "-")) {
        int number = digits(name.substring(task.word.length() + 1));
        if (number > 0) {
          return Optional.of(task.number(number));
        }
      }
    }
    return Optional.empty();
  }

  /** A whole number from 1 without leading noughts; 0 of anything else. */
  private static int digits(String text) {
    if (text.length() > MOST_DIGITS || text.startsWith("0")) {
      return 0;
    }
    int number = 0;
    for (int i = 0; i < text.length(); i++) {
      char digit = text.charAt(i);
      if (digit < '0' || digit > '9') {
        return 0;
      }
      int value = digit - '0';
      number = number * 10 + value;
    }
    return number;
  }

  /** Its name, short and unique in a plan: "coat-2". */
  public String name() {
    return task.numbered ? task.word + "-" + number : task.word;
  }

  /** Whether this is what is done in it. */
  public boolean is(Task other) {
    return task == other;
  }
}
