package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import benchlore.schedules.quantity.SourcedRange;
import java.util.Optional;

/** A stage of drying, each with its own wait. */
public enum Stage {
  /** A light touch leaves no mark. */
  TOUCH_DRY("touch dry"),
  /** The next coat may go on. */
  RECOAT_OPENS("recoat window opens"),
  /** The next coat needs a scuffed surface from here on. */
  RECOAT_CLOSES("recoat window closes"),
  /** It sands to powder. */
  SAND("dry to sand"),
  /** It can be picked up and turned over. */
  HANDLE("dry to handle"),
  /** Faces may touch: stacking, assembly. */
  STACK("dry to stack or assemble"),
  /** Careful use. */
  LIGHT_USE("light use"),
  /** Hard, resistant, fit for rubbing out. */
  FULL_CURE("full cure");

  private final String words;

  Stage(String words) {
    this.words = words;
  }

  /** The stage in the trade's words. */
  public String words() {
    return words;
  }

  /**
   * What the finish states for this stage.
   *
   * @param finish the finish
   * @return seconds in the reference air, or empty if the finish states none
   */
  public Optional<SourcedRange> of(Finish finish) {
    return switch (this) {
      case TOUCH_DRY -> finish.times().touchDry();
      case RECOAT_OPENS -> finish.times().recoatOpens();
      case RECOAT_CLOSES -> finish.times().recoatCloses();
      case SAND -> finish.times().sandAfter();
      case HANDLE -> finish.times().handleAfter();
      case STACK -> finish.times().stackAfter();
      case LIGHT_USE -> finish.times().lightUse();
      case FULL_CURE -> finish.times().fullCure();
    };
  }

  /** Whether a film or penetrating finish must state it. */
  boolean required() {
    return this != RECOAT_CLOSES && this != STACK;
  }
}
