package benchlore.schedules.project;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Message;
import benchlore.schedules.caution.ShopRows;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a wood asks for by its own traits under this finish or glue, each said once, at the step
 * where it matters, with its reason. The rules are those of the species' records and of the pages
 * on blotching, bleeding knots, iron stain and tacky films.
 */
final class WoodNotes {
  private static final List<Caution> SOLVENT = List.of(ShopRows.SOLVENT_WIPE.caution());

  private WoodNotes() {}

  /** What is done to the bare wood, last of all before the finish. */
  static List<Message> sanded(Species wood, Finish finish) {
    List<Message> notes = new ArrayList<>();
    Species.Surface surface = wood.surface();
    if (surface.resin() == Species.Resin.PITCH) {
      notes.add(
          Message.of(
              "First scrape the pitch off and wipe with white spirit: it clogs paper and comes"
                  + " through any finish."));
    }
    if (surface.resin() != Species.Resin.NONE && builds(finish) && !isShellac(finish)) {
      notes.add(
          Message.of(
              "Last, two thin coats of dewaxed shellac on every knot and resin pocket, or they"
                  + " bleed through."));
    }
    if (surface.blotchProne()) {
      blotch(finish).ifPresent(notes::add);
    }
    return notes;
  }

  /** Of solvent that {@link #sanded} asks for. */
  static List<Caution> sandedCautions(Species wood, Finish finish) {
    Species.Surface surface = wood.surface();
    boolean wetted = surface.blotchProne() && finish.role() == FinishRole.PENETRATING;
    return surface.resin() == Species.Resin.PITCH || wetted ? SOLVENT : List.of();
  }

  /** Of solvent that {@link #coated} asks for. */
  static List<Caution> coatedCautions(Species wood, Finish finish) {
    return isWiped(wood.surface(), finish) ? SOLVENT : List.of();
  }

  private static Optional<Message> blotch(Finish finish) {
    if (finish.role() == FinishRole.PENETRATING) {
      return Optional.of(
          Message.of(
              "This wood drinks unevenly: wet it with white spirit, and the patches that show now"
                  + " will show under oil."));
    }
    boolean liquid =
        finish.family() == FinishFamily.OIL_STAIN || finish.family() == FinishFamily.WATER_DYE;
    return finish.role() == FinishRole.STAIN && liquid
        ? Optional.of(
            Message.of(
                "This wood takes colour in clouds: try it on an offcut sanded the same way; a thin"
                    + " coat of dewaxed shellac first evens it."))
        : Optional.empty();
  }

  /** What is done just before the first coat goes on; what holds between coats as well. */
  static Optional<Message> coated(Species wood, Finish finish) {
    StringBuilder words = new StringBuilder();
    add(words, under(wood.surface(), finish));
    if (wood.surface().tanninRich() && carriesWater(finish)) {
      add(words, "No steel wool or steel brush: iron and this wood's tannin make black specks.");
      if (builds(finish)) {
        add(
            words,
            "Its tannin can bleed brown or yellow: try an offcut, or seal with dewaxed shellac.");
      }
    }
    return words.isEmpty() ? Optional.empty() : Optional.of(Message.of(words.toString()));
  }

  /** Whether the bare wood is wiped with solvent just before the first coat. */
  private static boolean isWiped(Species.Surface surface, Finish finish) {
    if (finish.role() == FinishRole.PENETRATING) {
      return surface.oily();
    }
    boolean asked = surface.underFilm() == Species.UnderFilm.WIPED;
    boolean oily = surface.oily() && surface.underFilm() != Species.UnderFilm.NONE;
    return builds(finish) && (asked || oily);
  }

  private static String under(Species.Surface surface, Finish finish) {
    boolean oily = surface.oily();
    if (finish.role() == FinishRole.PENETRATING) {
      return isWiped(surface, finish)
          ? "Wipe with acetone or naphtha just before: this wood's own oil slows an oil finish or"
              + " keeps it sticky."
          : "";
    }
    if (!builds(finish)) {
      return "";
    }
    boolean sealsItself = isShellac(finish) || finish.family() == FinishFamily.EPOXY;
    String wiped =
        !isWiped(surface, finish)
            ? ""
            : oily
                ? "Wipe with acetone or naphtha just before; its oil creeps back within the hour."
                : "Wipe with white spirit and let it dry, just before.";
    return switch (surface.underFilm()) {
      case BARE, WIPED -> wiped;
      case SEALED ->
          wiped
              + (sealsItself
                  ? ""
                  : oily
                      ? " Then a thin coat of dewaxed shellac, scuffed, or the film doesn't hold."
                      : "A thin coat of dewaxed shellac first, scuffed: its colour bleeds.");
      case NONE -> "No film lasts on this wood: oil it thinly or leave it bare.";
    };
  }

  /** What steel and wet glue do. */
  static Optional<Message> glued(Species wood, Adhesive adhesive) {
    return wood.surface().tanninRich() && adhesive.waterBased()
        ? Optional.of(
            Message.of(
                "Paper or tape under steel clamps: iron, wet glue and this wood's tannin leave"
                    + " black marks."))
        : Optional.empty();
  }

  private static boolean builds(Finish finish) {
    return finish.role() == FinishRole.FILM || finish.role() == FinishRole.SEALER;
  }

  private static boolean isShellac(Finish finish) {
    return finish.family() == FinishFamily.SHELLAC || finish.family() == FinishFamily.WAXED_SHELLAC;
  }

  private static boolean carriesWater(Finish finish) {
    return finish.curing().mechanisms().contains(DryingMechanism.COALESCENCE);
  }

  private static void add(StringBuilder words, String more) {
    words.append(words.isEmpty() || more.isEmpty() ? "" : " ").append(more);
  }
}
