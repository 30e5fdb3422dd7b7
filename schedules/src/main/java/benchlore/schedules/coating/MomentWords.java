package benchlore.schedules.coating;

import benchlore.schedules.time.Moment;

/** A moment in words, told from the application on: "at 03:00 the next day". */
final class MomentWords {
  private MomentWords() {}

  static String of(Moment moment, Moment from) {
    int days = from.date().daysUntil(moment.date());
    if (days == 0) {
      return moment.clock() + " that day";
    }
    return days == 1
        ? moment.clock() + " the next day"
        : moment.clock() + ", " + days + " days later";
  }
}
