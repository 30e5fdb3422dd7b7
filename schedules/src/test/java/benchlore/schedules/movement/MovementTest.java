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
}
