package benchlore.schedules.coating;

import benchlore.schedules.material.Finish;
import benchlore.schedules.room.EquivalentAge;

/**
 * The courses one coat's stages are reckoned on: touch dry by the first mechanism, full cure by the
 * last, the closing of the window and the pot life by the fastest, the others by the slowest.
 *
 * <p>Remembers each course it has made, since most stages share one. Not for sharing.
 */
final class DryingCourses {
  private static final int FIRST = 0;
  private static final int LAST = 1;
  private static final int SLOWEST = 2;
  private static final int FASTEST = 3;

  private final DryingRequest request;
  private final EquivalentAge.Course[] made = new EquivalentAge.Course[4];

  DryingCourses(DryingRequest request) {
    this.request = request;
  }

  EquivalentAge.Course of(Stage stage) {
    return switch (stage) {
      case TOUCH_DRY -> course(FIRST);
      case FULL_CURE -> course(LAST);
      case RECOAT_CLOSES -> course(FASTEST);
      case RECOAT_OPENS, SAND, HANDLE, STACK, LIGHT_USE -> course(SLOWEST);
    };
  }

  EquivalentAge.Course fastest() {
    return course(FASTEST);
  }

  private EquivalentAge.Course course(int wanted) {
    // With one mechanism all four are the same.
    int kind = request.finish().curing().mechanisms().size() == 1 ? FIRST : wanted;
    if (made[kind] == null) {
      made[kind] = EquivalentAge.course(request.climate(), request.start(), rate(kind));
    }
    return made[kind];
  }

  private EquivalentAge.Rate rate(int kind) {
    Finish finish = request.finish();
    return switch (kind) {
      case FIRST -> DryingRate.of(finish, finish.dryingMechanism());
      case LAST -> DryingRate.of(finish, finish.cureMechanism());
      case SLOWEST -> DryingRate.slowest(finish);
      default -> DryingRate.fastest(finish);
    };
  }
}
