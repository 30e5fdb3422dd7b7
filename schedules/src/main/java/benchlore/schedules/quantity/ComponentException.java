package benchlore.schedules.quantity;

/**
 * A value that can't be made since one of its components is not what it must be. Says which, so
 * that nobody has to read it out of the message.
 */
public final class ComponentException extends IllegalArgumentException {
  private static final long serialVersionUID = 1;

  private final String component;
  private final String problem;

  /**
   * The message is both, a space between.
   *
   * @param component the name of the component: "massShare"
   * @param problem what it must be, and what it is: "must be above 0, up to 1: 2"
   */
  public ComponentException(String component, String problem) {
    super(component + " " + problem);
    this.component = component;
    this.problem = problem;
  }

  /** The name of the component. */
  public String component() {
    return component;
  }

  /** What it must be, and what it is. */
  public String problem() {
    return problem;
  }
}
