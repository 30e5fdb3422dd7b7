package benchlore.schedules.material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import benchlore.schedules.quantity.Provenance;
import benchlore.schedules.quantity.SourcedRange;
import benchlore.schedules.quantity.Unit;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SpeciesTest {
  private static final Provenance MEMORY = Provenance.fromMemory("");

  private static Species wood(SourcedRange gravity, SourcedRange radial) {
    return new Species(
        Species.Group.HARDWOOD,
        gravity,
        Optional.empty(),
        new Species.Movement(
            radial, SourcedRange.of(8, Unit.PERCENT, MEMORY), Optional.empty(), Optional.empty()),
        new Species.Surface(
            Pores.DIFFUSE, false, false, false, false, Species.Resin.NONE, Species.UnderFilm.BARE));
  }

  @Test
  void namesTheFigureWithTheWrongUnit() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                wood(
                    SourcedRange.of(0.5, Unit.PERCENT, MEMORY),
                    SourcedRange.of(4, Unit.PERCENT, MEMORY)));
    assertEquals("specific-gravity must be in ratio: percent", e.getMessage());
  }

  @Test
  void namesTheFigureNoWoodHas() {
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                wood(
                    SourcedRange.of(0.5, Unit.RATIO, MEMORY),
                    SourcedRange.of(40, Unit.PERCENT, MEMORY)));
    assertEquals("radial-shrinkage must be 0.1 to 20.0: 40.0, 40.0", e.getMessage());
  }

  @Test
  void namesTheNull() {
    NullPointerException e =
        assertThrows(
            NullPointerException.class, () -> wood(null, SourcedRange.of(4, Unit.PERCENT, MEMORY)));
    assertEquals("specific-gravity", e.getMessage());
  }
}
