package benchlore.generator.site;

import benchlore.generator.drawing.days.DayLadder;
import benchlore.generator.units.Display;
import benchlore.schedules.answer.StepId;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.project.ProjectPlan;
import benchlore.schedules.project.Shop;
import benchlore.schedules.project.Step;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import benchlore.schedules.room.Climate;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;

/** A plan's steps, windows and wet films as its day ladder. */
final class PlanLadder {
  private static final int COLDEST = 5;

  private PlanLadder() {}

  static String draw(ProjectPlan plan, Shop room) {
    List<DayLadder.Block> blocks = new ArrayList<>();
    List<Interval> shop = new ArrayList<>();
    int number = 1;
    for (Step step : plan.steps()) {
      if (step.kind() == Step.Kind.WORK) {
        addBlocks(blocks, step, number);
        for (Interval slot : step.slots()) {
          shop.addAll(room.week().hours(slot.start().date()));
        }
      }
      number++;
    }
    DayLadder.Request request =
        new DayLadder.Request(
            blocks,
            windows(plan),
            wet(plan),
            shop.stream().distinct().toList(),
            nights(plan, room.climate()));
    return DayLadder.draw(request, "The days of this plan", "ladder");
  }

  /** The nights the plan passes through whose coldest hour is not the usual. */
  static List<DayLadder.Night> nights(ProjectPlan plan, Climate climate) {
    List<DayLadder.Night> nights = new ArrayList<>();
    for (Climate.Day day : climate.otherwise()) {
      double celsius = day.hours().get(COLDEST).celsius();
      Moment coldest = day.date().at(COLDEST, 0);
      boolean passed = coldest.isAfter(plan.start()) && coldest.isBefore(plan.end());
      if (passed && celsius != climate.hours().get(COLDEST).celsius()) {
        String words = Display.text(Quantity.of(celsius, Unit.CELSIUS));
        nights.add(new DayLadder.Night(coldest, celsius, words));
      }
    }
    return nights;
  }

  /** One block for each stretch. */
  private static void addBlocks(List<DayLadder.Block> blocks, Step step, int number) {
    boolean coat = step.id().is(StepId.Task.COAT);
    for (Interval stretch : step.stretches()) {
      blocks.add(new DayLadder.Block(number, stretch, coat));
    }
  }

  /** The windows of every coat that another follows. */
  private static List<Interval> windows(ProjectPlan plan) {
    List<Interval> windows = new ArrayList<>();
    for (CoatStep coat : plan.coats().coats()) {
      DryingTimes drying = coat.drying();
      if (drying.windowKnown() && coat.number() < plan.coats().coats().size()) {
        windows.add(
            new Interval(
                drying.moment(Stage.RECOAT_OPENS).orElseThrow(),
                drying.moment(Stage.RECOAT_CLOSES).orElseThrow()));
      }
    }
    return windows;
  }

  private static List<Interval> wet(ProjectPlan plan) {
    List<Interval> wet = new ArrayList<>();
    for (CoatStep coat : plan.coats().coats()) {
      coat.drying()
          .moment(Stage.TOUCH_DRY)
          .ifPresent(dry -> wet.add(new Interval(coat.start(), dry)));
    }
    return wet;
  }
}
