package benchlore.schedules.wood;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import benchlore.schedules.answer.Datum;
import benchlore.schedules.answer.Provenance;
import benchlore.schedules.answer.Unit;
import benchlore.schedules.trade.Pores;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WoodDataTest {
  private static final Provenance MEMORY = Provenance.fromMemory("");

  private static WoodData wood(Datum gravity, Datum radial) {
    return new WoodData(
        gravity,
        Optional.empty(),
        radial,
        Datum.of(8, Unit.PERCENT, MEMORY),
        Optional.empty(),
        Optional.empty(),
        Pores.DIFFUSE_POROUS,
        false,
        false,
        false,
        true,
        false);
  }

  @Test
  void namesTheFigureWithTheWrongUnit() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> wood(Datum.of(0.5, Unit.PERCENT, MEMORY), Datum.of(4, Unit.PERCENT, MEMORY)));
    assertEquals("specificGravity must be in RATIO: PERCENT", e.getMessage());
  }

  @Test
  void namesTheFigureNoWoodHas() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> wood(Datum.of(0.5, Unit.RATIO, MEMORY), Datum.of(40, Unit.PERCENT, MEMORY)));
    assertEquals("radialShrinkage must be 0.1 to 20.0: 40.0, 40.0", e.getMessage());
  }

  @Test
  void namesTheNull() {
    NullPointerException e =
        assertThrows(
            NullPointerException.class, () -> wood(null, Datum.of(4, Unit.PERCENT, MEMORY)));
    assertEquals("specificGravity", e.getMessage());
  }
}
