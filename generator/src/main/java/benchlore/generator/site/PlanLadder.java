package benchlore.generator.site;

import benchlore.generator.drawing.DayLadder;
import benchlore.schedules.calendar.ShopWeek;
import benchlore.schedules.calendar.Slot;
import benchlore.schedules.coating.CoatStep;
import benchlore.schedules.coating.DryingTimes;
import benchlore.schedules.coating.Stage;
import benchlore.schedules.plan.ProjectPlan;
import benchlore.schedules.plan.Step;
import java.util.ArrayList;
import java.util.List;

/** A plan's steps, windows and wet films as its day ladder. */
final class PlanLadder {
  private PlanLadder() {}

  static String draw(ProjectPlan plan, ShopWeek week) {
    List<DayLadder.Block> blocks = new ArrayList<>();
    List<DayLadder.Stretch> shop = new ArrayList<>();
    int number = 1;
    for (Step step : plan.steps()) {
      if (step.kind() == Step.Kind.WORK) {
        addBlocks(blocks, step, number);
        for (Slot slot : step.slots()) {
          week.hours(slot.start().toLocalDate()).forEach(open -> shop.add(stretch(open)));
        }
      }
      number++;
    }
    DayLadder.Request request =
        new DayLadder.Request(blocks, windows(plan), wet(plan), shop.stream().distinct().toList());
    return DayLadder.draw(request, "The days of this plan", "ladder");
  }

  /** One block for each stretch. */
  private static void addBlocks(List<DayLadder.Block> blocks, Step step, int number) {
    boolean coat = step.id().startsWith("coat-");
    for (Slot stretch : step.stretches()) {
      blocks.add(new DayLadder.Block(number, stretch(stretch), coat));
    }
  }

  /** The windows of every coat that another follows. */
  private static List<DayLadder.Stretch> windows(ProjectPlan plan) {
    List<DayLadder.Stretch> windows = new ArrayList<>();
    for (CoatStep coat : plan.coats().coats()) {
      DryingTimes drying = coat.drying();
      if (drying.windowKnown() && coat.number() < plan.coats().coats().size()) {
        windows.add(
            new DayLadder.Stretch(
                drying.moment(Stage.RECOAT_OPENS).orElseThrow(),
                drying.moment(Stage.RECOAT_CLOSES).orElseThrow()));
      }
    }
    return windows;
  }

  private static List<DayLadder.Stretch> wet(ProjectPlan plan) {
    List<DayLadder.Stretch> wet = new ArrayList<>();
    for (CoatStep coat : plan.coats().coats()) {
      coat.drying()
          .moment(Stage.TOUCH_DRY)
          .ifPresent(dry -> wet.add(new DayLadder.Stretch(coat.start(), dry)));
    }
    return wet;
  }

  private static DayLadder.Stretch stretch(Slot slot) {
    return new DayLadder.Stretch(slot.start(), slot.end());
  }
}
