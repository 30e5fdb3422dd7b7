package benchlore.schedules.cutting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class RimSpeedTest {
  @ParameterizedTest(name = "{arguments}")
  @CsvFileSource(resources = "/published/cutting/rim-speed.csv", numLinesToSkip = 1)
  void eitherWayItMeetsThePublishedOnes(double diameter, double rpm, double rim, double tolerance) {
    assertEquals(rim, RimSpeed.metrePerSecond(diameter, rpm), tolerance);
    assertEquals(rpm, RimSpeed.rpm(diameter, rim), rpm * 0.002);
  }

  @Test
  void nonsenseIsNoFigure() {
    assertTrue(Double.isNaN(RimSpeed.rpm(0, 10)));
    assertTrue(Double.isNaN(RimSpeed.metrePerSecond(0.01, -1)));
  }
}
