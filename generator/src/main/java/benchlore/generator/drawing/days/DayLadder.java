package benchlore.generator.drawing.days;

import benchlore.generator.drawing.svg.Label;
import benchlore.generator.drawing.svg.Measure;
import benchlore.generator.drawing.svg.Num;
import benchlore.generator.drawing.svg.Svg;
import benchlore.schedules.present.DayRow;
import java.util.List;

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

  private static final double MINUTES = 60;

  private final Svg svg;

  private DayLadder(Svg svg) {
    this.svg = svg;
  }

  /**
   * Draws the ladder, for a page: its days are marked so that the page's script may rewrite them.
   *
   * @param days what to draw, at least one
   * @param title its title
   * @param idPrefix makes ids unique on the page
   * @return SVG
   */
  public static String draw(List<DayRow> days, String title, String idPrefix) {
    String words = words(days);
    Svg svg = Svg.titledHtml(WIDTH, height(days), new Label(idPrefix, title, words), words);
    new DayLadder(svg).rows(days);
    return svg.end();
  }

  private static String words(List<DayRow> days) {
    return DayRow.work(days)
        + " pieces of work on "
        + days.size()
        + " days from "
        + Svg.dayHtml(days.get(0).date())
        + " to "
        + Svg.dayHtml(days.get(days.size() - 1).date())
        + ", each day a bar from midnight to midnight; the numbers are those of the steps below.";
  }

  private static double height(List<DayRow> days) {
    double height = TOP;
    for (DayRow day : days) {
      height += (day.daysPassed() > 0 ? GAP_ROW : 0) + ROW;
    }
    return height + 4;
  }

  private void rows(List<DayRow> days) {
    for (int hour = 0; hour <= 24; hour += 6) {
      svg.text("middle", LEFT + hour * HOUR, TOP - 10, Integer.toString(hour));
    }
    double y = TOP;
    for (DayRow day : days) {
      if (day.daysPassed() > 0) {
        wait(day.daysPassed(), y);
        y += GAP_ROW;
      }
      svg.rect("lad-day", LEFT, y, 24 * HOUR, ROW - 10);
      svg.day("start", 4, y + 16, day.date());
      for (DayRow.Bar bar : day.bars()) {
        bar(bar, y);
      }
      y += ROW;
    }
  }

  private void wait(int days, double y) {
    String words = days == 1 ? "1 day passes" : days + " days pass";
    svg.line("lad-wait", LEFT + 2, y + GAP_ROW / 2 - 2, LEFT + 20, y + GAP_ROW / 2 - 2);
    svg.text("start", LEFT + 28, y + GAP_ROW / 2 + 3, words);
  }

  private void bar(DayRow.Bar bar, double y) {
    switch (bar.kind()) {
      case DARK -> rect("lad-night", bar, y, ROW - 10);
      case OTHERWISE -> rect("lad-otherwise", bar, y, ROW - 10);
      case SHOP -> rect("lad-shop", bar, y, ROW - 10);
      case WINDOW -> rect("lad-window", bar, y + ROW - 10, 4);
      case WET -> rect("lad-wet", bar, y - 3, 3);
      case CLAMPED -> rect("lad-clamped", bar, y + 2, ROW - 14);
      case WORK -> block("lad-work", bar, y);
      case COAT -> block("lad-coat", bar, y);
      case COLDEST -> coldest(bar, y);
      case MOMENT -> moment(bar, y);
    }
  }

  private void rect(String style, DayRow.Bar bar, double y, double height) {
    svg.rect(style, x(bar.fromMinute()), y, x(bar.toMinute()) - x(bar.fromMinute()), height);
  }

  private void block(String style, DayRow.Bar bar, double y) {
    double from = x(bar.fromMinute());
    double width = Math.max(x(bar.toMinute()) - from, 4);
    svg.rect(style, from, y + 2, width, ROW - 14);
    if (width >= (bar.label().length() < 2 ? 10 : 15)) {
      svg.number(from + width / 2, y + 17, bar.label());
    }
  }

  private void coldest(DayRow.Bar bar, double y) {
    double x = x(bar.fromMinute());
    svg.path("lad-coldest", "M" + Num.of(x) + " " + Num.of(y + ROW - 11) + "l-4 -7h8Z");
    bar.figure().ifPresent(figure -> svg.figure("end", x - 6, y + 16, Measure.of(figure)));
  }

  private void moment(DayRow.Bar bar, double y) {
    double x = x(bar.fromMinute());
    boolean late = bar.fromMinute() > 15 * MINUTES;
    svg.path("lad-moment", "M" + Num.of(x) + " " + Num.of(y - 2) + "v" + Num.of(ROW - 6));
    svg.text(late ? "end" : "start", x + (late ? -4 : 4), y + 16, bar.label());
  }

  private static double x(double minute) {
    return LEFT + minute / MINUTES * HOUR;
  }
}
