package benchlore.generator.drawing.days;

import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Svg;
import benchlore.schedules.time.Date;
import benchlore.schedules.time.Interval;
import benchlore.schedules.time.Moment;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * A plan drawn day by day: one row a day, midnight to midnight, night shaded, shop hours outlined,
 * work as numbered blocks, recoat windows as bands, wet film as a line, nights that were otherwise
 * tinted, with their coldest figure. Days without anything are one line of waiting.
 */
public final class DayLadder {
  private static final double WIDTH = 430;
  private static final double LEFT = 84;
  private static final double HOUR = (WIDTH - LEFT - 8) / 24;
  private static final double ROW = 34;
  private static final double GAP_ROW = 24;
  private static final double TOP = 26;

  /**
   * A numbered piece of work.
   *
   * @param number as in the list of steps
   * @param when its stretch
   * @param coat whether a coat goes on, drawn apart
   */
  public record Block(int number, Interval when, boolean coat) {}

  /**
   * A night that was colder or warmer than the usual.
   *
   * @param coldest its coldest hour, in the morning
   * @param celsius how warm it is then
   * @param words the same, written out
   */
  public record Night(Moment coldest, double celsius, String words) {
    Interval dark() {
      Date morning = coldest.date();
      return new Interval(morning.plusDays(-1).at(21, 0), morning.at(7, 0));
    }
  }

  /**
   * What to draw.
   *
   * @param blocks work
   * @param windows when the next coat may go on without scuffing
   * @param wet when a film is wet
   * @param shop hours someone is there, for the days drawn
   * @param nights those that were otherwise; the mornings after them are drawn too
   */
  public record Request(
      List<Block> blocks,
      List<Interval> windows,
      List<Interval> wet,
      List<Interval> shop,
      List<Night> nights) {
    /** Copies the lists; refuses a plan without work. */
    public Request {
      blocks = List.copyOf(blocks);
      windows = List.copyOf(windows);
      wet = List.copyOf(wet);
      shop = List.copyOf(shop);
      nights = List.copyOf(nights);
      if (blocks.isEmpty()) {
        throw new IllegalArgumentException("blocks must not be empty");
      }
    }
  }

  private final Request request;
  private final Svg svg;

  private DayLadder(Request request, Svg svg) {
    this.request = request;
    this.svg = svg;
  }

  /**
   * Draws the ladder, for a page: its days are marked so that the page's script may rewrite them.
   *
   * @param request what to draw
   * @param title its title
   * @param idPrefix makes ids unique on the page
   * @return SVG
   */
  public static String draw(Request request, String title, String idPrefix) {
    SortedSet<Date> days = days(request);
    String words = words(request, days);
    Svg svg = Svg.titledHtml(WIDTH, height(days), new Label(idPrefix, title, words), words);
    new DayLadder(request, svg).rows(days);
    return svg.end();
  }

  private static String words(Request request, SortedSet<Date> days) {
    return request.blocks().size()
        + " pieces of work on "
        + days.size()
        + " days from "
        + Svg.dayHtml(days.first())
        + " to "
        + Svg.dayHtml(days.last())
        + ", each day a bar from midnight to midnight; the numbers are those of the steps below.";
  }

  private static SortedSet<Date> days(Request request) {
    TreeSet<Date> days = new TreeSet<>();
    for (Block block : request.blocks()) {
      days.add(block.when().start().date());
    }
    for (Night night : request.nights()) {
      days.add(night.coldest().date());
    }
    return days;
  }

  private static double height(SortedSet<Date> days) {
    double height = TOP;
    Date before = null;
    for (Date day : days) {
      height += before != null && gap(before, day) > 0 ? GAP_ROW : 0;
      height += ROW;
      before = day;
    }
    return height + 4;
  }

  private static int gap(Date before, Date day) {
    return before.daysUntil(day) - 1;
  }

  private void rows(SortedSet<Date> days) {
    for (int hour = 0; hour <= 24; hour += 6) {
      svg.text("middle", LEFT + hour * HOUR, TOP - 10, hour == 24 ? "24" : Integer.toString(hour));
    }
    double y = TOP;
    Date before = null;
    for (Date day : days) {
      if (before != null && gap(before, day) > 0) {
        wait(gap(before, day), y);
        y += GAP_ROW;
      }
      row(day, y);
      y += ROW;
      before = day;
    }
  }

  private void wait(int days, double y) {
    String words = days == 1 ? "1 day passes" : days + " days pass";
    svg.line("lad-wait", LEFT + 2, y + GAP_ROW / 2 - 2, LEFT + 20, y + GAP_ROW / 2 - 2);
    svg.text("start", LEFT + 28, y + GAP_ROW / 2 + 3, words);
  }

  private void row(Date day, double y) {
    svg.rect("lad-day", LEFT, y, 24 * HOUR, ROW - 10);
    svg.rect("lad-night", LEFT, y, 7 * HOUR, ROW - 10);
    svg.rect("lad-night", LEFT + 21 * HOUR, y, 3 * HOUR, ROW - 10);
    svg.day("start", 4, y + 16, day);
    for (Night night : request.nights()) {
      night(night, day, y);
    }
    for (Interval open : request.shop()) {
      band("lad-shop", open, day, y, ROW - 10);
    }
    for (Interval window : request.windows()) {
      band("lad-window", window, day, y + ROW - 10, 4);
    }
    for (Interval wet : request.wet()) {
      band("lad-wet", wet, day, y - 3, 3);
    }
    for (Block block : request.blocks()) {
      if (block.when().start().date().equals(day)) {
        block(block, y);
      }
    }
  }

  private void night(Night night, Date day, double y) {
    band("lad-otherwise", night.dark(), day, y, ROW - 10);
    if (night.coldest().date().equals(day)) {
      double x = LEFT + hours(day, night.coldest()) * HOUR;
      double tip = y + ROW - 11;
      svg.path("lad-coldest", "M" + Num.of(x) + " " + Num.of(tip) + "l-4 -7h8Z");
      svg.figure(
          "end", x - 6, y + 16, new Measure(night.words(), Num.of(night.celsius()), "celsius"));
    }
  }

  private void band(String style, Interval stretch, Date day, double y, double height) {
    double from = Math.max(0, hours(day, stretch.start()));
    double to = Math.min(24, hours(day, stretch.end()));
    if (to > from) {
      svg.rect(style, LEFT + from * HOUR, y, (to - from) * HOUR, height);
    }
  }

  private void block(Block block, double y) {
    Date day = block.when().start().date();
    double from = hours(day, block.when().start());
    double to = Math.min(24, hours(day, block.when().end()));
    double width = Math.max((to - from) * HOUR, 4);
    svg.rect(block.coat() ? "lad-coat" : "lad-work", LEFT + from * HOUR, y + 2, width, ROW - 14);
    if (width >= (block.number() < 10 ? 10 : 15)) {
      svg.number(LEFT + from * HOUR + width / 2, y + 17, block.number());
    }
  }

  private static double hours(Date day, Moment moment) {
    return day.midnight().secondsUntil(moment) / 3_600;
  }
}
