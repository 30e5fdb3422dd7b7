package benchlore.schedules.present;

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
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A plan's days as rows to draw: its work, windows, wet films, shop hours and odd nights. */
public final class PlanDays {
  private static final int COLDEST_HOUR = 5;
  private static final int DUSK_HOUR = 21;
  private static final int DAWN_HOUR = 7;

  private final ProjectPlan plan;
  private final Shop shop;
  private final List<DayMark> marks = new ArrayList<>();

  private PlanDays(ProjectPlan plan, Shop shop) {
    this.plan = plan;
    this.shop = shop;
  }

  /**
   * The rows of a plan.
   *
   * @param plan its answer
   * @param shop where it is worked on
   */
  public static List<DayRow> of(ProjectPlan plan, Shop shop) {
    PlanDays days = new PlanDays(plan, shop);
    days.marks.addAll(nights(plan, shop.climate()));
    days.work();
    days.coats();
    return DayRow.of(days.marks);
  }

  /** The nights the plan passes through whose coldest hour is not the usual; each two marks. */
  public static List<DayMark> nights(ProjectPlan plan, Climate climate) {
    double usual = climate.hours().get(COLDEST_HOUR).celsius();
    List<DayMark> nights = new ArrayList<>();
    for (Climate.Day day : climate.otherwise()) {
      double celsius = day.hours().get(COLDEST_HOUR).celsius();
      Moment coldest = day.date().at(COLDEST_HOUR, 0);
      if (coldest.isAfter(plan.start()) && coldest.isBefore(plan.end()) && celsius != usual) {
        Date evening = day.date().plusDays(-1);
        Interval dark = new Interval(evening.at(DUSK_HOUR, 0), day.date().at(DAWN_HOUR, 0));
        nights.add(DayMark.of(DayMark.Kind.OTHERWISE, dark, ""));
        nights.add(
            new DayMark(
                DayMark.Kind.COLDEST,
                new Interval(coldest, coldest),
                "",
                Optional.of(Quantity.of(celsius, Unit.CELSIUS))));
      }
    }
    return nights;
  }

  private void work() {
    List<Date> seen = new ArrayList<>();
    int number = 1;
    for (Step step : plan.steps()) {
      if (step.kind() == Step.Kind.WORK) {
        DayMark.Kind kind = step.id().is(StepId.Task.COAT) ? DayMark.Kind.COAT : DayMark.Kind.WORK;
        for (Interval stretch : step.stretches()) {
          marks.add(DayMark.of(kind, stretch, Integer.toString(number)));
        }
        for (Interval slot : step.slots()) {
          hours(slot.start().date(), seen);
        }
      }
      number++;
    }
  }

  private void hours(Date day, List<Date> seen) {
    if (!seen.contains(day)) {
      seen.add(day);
      for (Interval open : shop.week().hours(day)) {
        marks.add(DayMark.of(DayMark.Kind.SHOP, open, ""));
      }
    }
  }

  private void coats() {
    for (ProjectPlan.Laid laid : plan.layers()) {
      coats(laid.coats().coats());
    }
  }

  private void coats(List<CoatStep> coats) {
    for (CoatStep coat : coats) {
      DryingTimes drying = coat.drying();
      drying.moment(Stage.TOUCH_DRY).ifPresent(dry -> band(DayMark.Kind.WET, coat.start(), dry));
      if (drying.windowKnown() && coat.number() < coats.size()) {
        band(
            DayMark.Kind.WINDOW,
            drying.moment(Stage.RECOAT_OPENS).orElseThrow(),
            drying.moment(Stage.RECOAT_CLOSES).orElseThrow());
      }
    }
  }

  private void band(DayMark.Kind kind, Moment from, Moment to) {
    marks.add(DayMark.of(kind, new Interval(from, to), ""));
  }
}
