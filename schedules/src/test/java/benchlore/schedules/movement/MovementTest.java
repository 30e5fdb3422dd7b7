package benchlore.schedules.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.material.Species;
import benchlore.schedules.quantity.SourcedRange;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class MovementTest {
  @ParameterizedTest(name = "{0} {1}: {2} % -> {3} within {4}: {5} [{6}]")
  @CsvFileSource(resources = "/published/wood/coefficients.csv", numLinesToSkip = 1)
  void shrinkageGivesThePrintedCoefficient(
      String species, String direction, double shrinkage, double coefficient, double tolerance) {
    assertEquals(
        coefficient,
        Movement.coefficientFromShrinkage(shrinkage),
        tolerance,
        () -> species + " " + direction);
  }

  @ParameterizedTest(name = "{0}: {1} m x {2} x ({4} - {3}) -> {5} within {6}: {7} [{8}]")
  @CsvFileSource(resources = "/published/wood/movement.csv", numLinesToSkip = 1)
  void meetsWorkedExample(
      String name,
      double width,
      double coefficient,
      double from,
      double to,
      double change,
      double tolerance) {
    assertEquals(change, Movement.changeMetre(width, coefficient, from, to), tolerance, () -> name);
  }

  /** Independent check: the strain tensor turned by commons-math3's matrices. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 10, 22.5, 30, 45, 60, 75, 90})
  void ringAngleTurnsTheStrain(double degrees) {
    double t = 0.00369;
    double r = 0.00158;
    double a = Math.toRadians(degrees);
    RealMatrix turn =
        MatrixUtils.createRealMatrix(
            new double[][] {{Math.cos(a), -Math.sin(a)}, {Math.sin(a), Math.cos(a)}});
    RealMatrix strain = MatrixUtils.createRealDiagonalMatrix(new double[] {t, r});
    double expected = turn.multiply(strain).multiply(turn.transpose()).getEntry(0, 0);
    assertEquals(expected, Movement.coefficientAt(t, r, degrees), 1e-15);
  }

  @ParameterizedTest
  @ValueSource(doubles = {-1, 0, 20.1, Double.NaN, Double.POSITIVE_INFINITY})
  void noCoefficientFromNonsense(double shrinkage) {
    assertTrue(Double.isNaN(Movement.coefficientFromShrinkage(shrinkage)));
  }

  @Test
  void quarteredMovesLessThanRiftLessThanFlat() {
    Species oak = Woods.redOak();
    SourcedRange flat = Movement.over(oak, RingAngle.FLAT);
    SourcedRange rift = Movement.over(oak, RingAngle.RIFT);
    SourcedRange quartered = Movement.over(oak, RingAngle.QUARTERED);
    assertTrue(quartered.high() < rift.high() && rift.high() < flat.high());
    assertEquals(0.00369, flat.high(), 1e-12);
    assertEquals(0.00158, quartered.low(), 1e-12);
  }

  @Property(tries = 200)
  boolean thereAndBackIsOpposite(
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 3) double width,
      @ForAll @DoubleRange(min = 3, max = 25) double from,
      @ForAll @DoubleRange(min = 3, max = 25) double to) {
    double there = Movement.changeMetre(width, 0.003, from, to);
    return there == -Movement.changeMetre(width, 0.003, to, from)
        && Movement.changeMetre(width, 0.003, from, from) == 0;
  }

  @Property(tries = 200)
  boolean angleStaysBetweenRadialAndTangential(
      @ForAll @DoubleRange(min = 0, max = 90) double degrees,
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.004) double one,
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.004) double other) {
    double at = Movement.coefficientAt(one, other, degrees);
    return at >= Math.min(one, other) - 1e-15 && at <= Math.max(one, other) + 1e-15;
  }

  /** Course page, problem 4.34: 13.25 in, 6 % shrinkage over 30 points, 19 to 10 %: 13.01 in. */
  @Test
  void theSecondFormMeetsAWorkedExample() {
    double depth = 13.25 + Movement.changeByShrinkageMetre(13.25, 6, 19, 10);
    assertEquals(13.01, depth, 0.005);
  }

  /** What shrinkage means: from green at 30 % to dry a size loses just that share. */
  @ParameterizedTest
  @ValueSource(doubles = {2.2, 7.6, 8.6, 11.9})
  void fromGreenToDryItShrinksByTheShrinkage(double shrinkage) {
    assertEquals(-shrinkage / 100, Movement.changeByShrinkageMetre(1, shrinkage, 30, 0), 1e-12);
    double coefficient = Movement.coefficientFromShrinkage(shrinkage);
    assertEquals(
        Movement.changeByShrinkageMetre(1, shrinkage, 14, 25),
        Movement.acrossMetre(1, coefficient, 14, 25),
        1e-12);
    assertTrue(Double.isNaN(Movement.changeByShrinkageMetre(1, shrinkage, 10, 31)));
    assertTrue(Double.isNaN(Movement.changeByShrinkageMetre(1, 0, 10, 12)));
  }

  /** Handbook, chapter 13: with no more than 6 to 14 % either form serves, within a hair. */
  @Test
  void theTwoFormsAgreeAboutTheirExample() {
    double shrinkage = 7.0; // that gives the example's coefficient, 0.00245
    assertEquals(0.00245, Movement.coefficientFromShrinkage(shrinkage), 1e-5);
    assertEquals(0.0017, Movement.changeByShrinkageMetre(0.232, shrinkage, 8, 11), 5e-5);
  }

  @Property(tries = 300)
  boolean oneFormGoesOnWhereTheOtherEnds(
      @ForAll @DoubleRange(min = 0, max = 30) double from,
      @ForAll @Scale(5) @DoubleRange(min = 0.001, max = 0.004) double coefficient) {
    for (double border : new double[] {6, 14, 30}) {
      double under = Movement.acrossMetre(1, coefficient, from, border - 1e-9);
      double over = Movement.acrossMetre(1, coefficient, from, border + 1e-9);
      if (Math.abs(over - under) > 1e-10) {
        return false;
      }
    }
    return Movement.acrossMetre(1, coefficient, from, 30)
            == Movement.acrossMetre(1, coefficient, from, 40)
        && Math.abs(Movement.acrossMetre(1, coefficient, from, from)) < 1e-15;
  }

  @Property(tries = 200)
  boolean withinSixToFourteenNothingIsNew(
      @ForAll @DoubleRange(min = 6, max = 14) double from,
      @ForAll @DoubleRange(min = 6, max = 14) double to) {
    double first = Movement.changeMetre(0.5, 0.003, from, to);
    return Math.abs(Movement.acrossMetre(0.5, 0.003, from, to) - first) < 1e-15;
  }

  @Property(tries = 200)
  boolean moreWaterIsMoreWidth(
      @ForAll @DoubleRange(min = 0, max = 30) double from,
      @ForAll @DoubleRange(min = 0, max = 29) double to) {
    return Movement.acrossMetre(1, 0.003, from, to) < Movement.acrossMetre(1, 0.003, from, to + 1);
  }
}
