package benchlore.generator.page;

import benchlore.generator.content.LibraryRecord;
import benchlore.schedules.answer.Caution;
import benchlore.schedules.project.Step;
import java.util.List;
import java.util.Optional;

/**
 * The page of one plan: laid out in days, or refused.
 *
 * @param title what it is called
 * @param file name of its files, without their ending
 * @param intro HTML
 * @param materials records of the wood, the adhesive and the finishes
 * @param refusals why it can't be done as asked; none where it is laid out
 * @param laid the plan laid out; empty where it is refused
 */
public record PlanModel(
    String title,
    String file,
    String intro,
    List<LibraryRecord> materials,
    List<Refused> refusals,
    Optional<Laid> laid)
    implements PageModel {
  /** Copies the lists. */
  public PlanModel {
    materials = List.copyOf(materials);
    refusals = List.copyOf(refusals);
    if (refusals.isEmpty() == laid.isEmpty()) {
      throw new IllegalArgumentException("a plan is either refused or laid out: " + title);
    }
  }

  @Override
  public String template() {
    return "plan";
  }

  /**
   * A reason why a plan can't be done, all of it HTML.
   *
   * @param problem what stands against it
   * @param remedy what to change
   */
  public record Refused(String problem, String remedy) {}

  /**
   * A plan laid out.
   *
   * @param from HTML: the day it starts
   * @param until HTML: the day all is cured
   * @param hours hands-on work
   * @param ladder SVG: the days
   * @param nights whether a night was warmer or colder than planned
   * @param shopping what to have ready
   * @param days the steps by the day they begin on
   */
  public record Laid(
      String from,
      String until,
      String hours,
      String ladder,
      boolean nights,
      List<Bought> shopping,
      List<Day> days) {
    /** Copies the lists. */
    public Laid {
      shopping = List.copyOf(shopping);
      days = List.copyOf(days);
    }
  }

  /**
   * Something to have ready.
   *
   * @param what it is
   * @param amount HTML
   * @param remark empty where there is none
   */
  public record Bought(String what, String amount, String remark) {}

  /**
   * A day of work.
   *
   * @param day HTML: its date
   * @param steps those that begin on it
   */
  public record Day(String day, List<Shown> steps) {
    /** Copies the list. */
    public Day {
      steps = List.copyOf(steps);
    }
  }

  /**
   * A step as its card shows it.
   *
   * @param step which
   * @param number its place in the plan, from 1
   * @param when HTML: its stretches of time
   * @param window HTML: the recoat window after it; empty where there is none
   * @param cautions what can hurt or spoil and has not been told at an earlier step
   * @param again names of what has been; empty if there is none
   * @param notes HTML, a line each
   * @param working how its figures came about
   */
  public record Shown(
      Step step,
      int number,
      String when,
      String window,
      List<Care> cautions,
      String again,
      List<String> notes,
      List<Working> working) {
    /** Copies the lists. */
    public Shown {
      cautions = List.copyOf(cautions);
      notes = List.copyOf(notes);
      working = List.copyOf(working);
    }

    /** Whether someone works at it, rather than waits. */
    public boolean work() {
      return step.kind() == Step.Kind.WORK;
    }
  }

  /**
   * A caution of a step.
   *
   * @param severity how bad it is
   * @param what HTML: what can happen
   * @param measure HTML: what to do
   */
  public record Care(Caution.Severity severity, String what, String measure) {}

  /**
   * How one figure came about.
   *
   * @param name what the figure is
   * @param value HTML
   * @param formula in words and signs
   * @param rule where the formula comes from
   * @param inputs what went in
   */
  public record Working(
      String name, String value, String formula, String rule, List<Input> inputs) {
    /** Copies the list. */
    public Working {
      inputs = List.copyOf(inputs);
    }
  }

  /**
   * A figure that went into another.
   *
   * @param name what it is
   * @param value HTML
   * @param from where it comes from
   */
  public record Input(String name, String value, String from) {}
}
