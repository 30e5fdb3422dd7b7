package benchlore.generator.drawing.surface;

import benchlore.generator.drawing.svg.Box;
import benchlore.generator.drawing.svg.Svg;

/** The wood seen through a film, and the scratches rubbed into it. */
final class FilmGrain {
  private static final double STEP = 25;
  private static final double[] GAPS = {7, 11, 5, 9, 14, 6, 10, 8};

  private FilmGrain() {}

  static void draw(Svg svg, Box box) {
    StringBuilder d = new StringBuilder();
    double y = box.z0() + 6;
    for (int i = 0; y < box.z1() - 3; i++) {
      line(d, box, y, i);
      y += GAPS[i % GAPS.length];
    }
    svg.path("drw-film-grain", d.toString());
  }

  private static void line(StringBuilder d, Box box, double y, int number) {
    int steps = (int) Math.round((box.x1() - box.x0()) / STEP);
    for (int i = 0; i <= steps; i++) {
      double wave = 1.6 * Math.sin(i * 0.55 + number * 0.8);
      d.append(i == 0 ? 'M' : 'L').append(Svg.pair(box.x0() + i * STEP, y + wave));
    }
  }

  static void scratches(Svg svg, Box box) {
    StringBuilder d = new StringBuilder();
    int number = 0;
    for (double y = box.z0() + 1.5; y < box.z1() - 1; y += 2.5) {
      double from = box.x0() + 2 + number * 37 % 90;
      double to = box.x1() - 2 - number * 53 % 90;
      d.append('M').append(Svg.pair(from, y)).append('L').append(Svg.pair(to, y));
      number++;
    }
    svg.path("drw-scratch", d.toString());
  }
}
