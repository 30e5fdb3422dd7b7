package benchlore.schedules.time;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

final class BookingsTest {
  private static final Date DAY = Date.of(2027, 4, 3);
  private static final Moment NINE = DAY.at(9, 0);

  private static Bookings withNoonTaken() {
    Bookings bookings = new Bookings(ShopWeek.daily(9, 17));
    bookings.take(new Interval(DAY.at(12, 0), DAY.at(13, 0)));
    return bookings;
  }

  @Test
  void workBeginsAndEndsOnFiveMinutes() {
    assertEquals(
        Optional.of(new Interval(DAY.at(9, 5), DAY.at(9, 15))),
        withNoonTaken().unbroken(NINE.plusSeconds(1), 301));
  }

  @Test
  void unbrokenWorkWaitsForWhatIsBooked() {
    assertEquals(
        Optional.of(new Interval(DAY.at(13, 0), DAY.at(17, 0))),
        withNoonTaken().unbroken(NINE, 4 * 3600));
  }

  @Test
  void workInPiecesGoesRoundWhatIsBooked() {
    assertEquals(
        List.of(
            new Interval(NINE, DAY.at(12, 0)),
            new Interval(DAY.at(13, 0), DAY.at(17, 0)),
            new Interval(DAY.plusDays(1).at(9, 0), DAY.plusDays(1).at(10, 0))),
        withNoonTaken().pieces(NINE, 8 * 3600));
  }

  @Test
  void workLongerThanAnyDayNeverFitsUnbroken() {
    assertEquals(Optional.empty(), withNoonTaken().unbroken(NINE, 9 * 3600));
  }

  @Test
  void aShopThatIsNeverOpenHoldsNothing() {
    Bookings never = new Bookings(ShopWeek.of(java.util.Map.of(), List.of()));
    assertEquals(List.of(), never.pieces(NINE, 60));
  }
}
