package benchlore.schedules.sanding;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Caution.Severity;
import benchlore.schedules.answer.Message;
import benchlore.schedules.quantity.Quantity;
import benchlore.schedules.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** What to watch for in a schedule. Dust is always among it. */
final class SandingCautions {
  private final List<Caution> cautions = new ArrayList<>();

  private SandingCautions() {}

  static List<Caution> of(SandingRequest request, StartDepth start, SandingSchedule schedule) {
    SandingCautions all = new SandingCautions();
    all.health(start, schedule);
    all.surface(request, start);
    all.passes(request, schedule);
    all.extras(request, schedule);
    return all.cautions;
  }

  private void health(StartDepth start, SandingSchedule schedule) {
    if (start.filmMicron() > 0) {
      add(
          "old-film-lead",
          Severity.DANGER,
          "Old paint or varnish may hold lead; its dust poisons you and above all children.",
          "Test it before the first stroke. If it holds lead, don't dry-sand it: follow your local"
              + " rules or call a licensed firm.");
    }
    cautions.add(
        new Caution(
            "wood-dust",
            Severity.HEALTH,
            Message.of(
                "This makes {0} of dust. Fine wood dust harms the lungs, and some woods sensitise.",
                Quantity.of(schedule.totals().dustKilogram(), Unit.KILOGRAM)),
            Message.of(
                "Sand with extraction and a close-fitting particle respirator; vacuum, don't"
                    + " sweep or blow.")));
    if (start.filmMicron() > 0 || schedule.extras().betweenCoats().isPresent()) {
      add(
          "finish-dust-fire",
          Severity.DANGER,
          "Sanding dust from a finish can heat up by itself in a bag and burn hours later.",
          "Empty the bag after each session into a lidded metal can outdoors; follow the finish's"
              + " label and safety data sheet.");
    }
  }

  private void surface(SandingRequest request, StartDepth start) {
    if (start.depthMicron() > SandingFigures.PLANE_ABOVE.low()) {
      cautions.add(
          new Caution(
              "too-deep-to-sand",
              Severity.WORK,
              Message.of(
                  "Marks {0} deep take long to sand and the face won't stay flat.",
                  Quantity.of(start.depthMicron(), Unit.MICRON)),
              Message.of("Plane, scrape or strip first, then plan again from that surface.")));
    }
    if (request.start() instanceof StartSurface.Planed planed
        && planed.knifePitchMetre() > SandingFigures.KNIFE_PITCH.high()) {
      knifeMarks();
    }
    if (Sanding.target(request, start).isPassedBy(start.grainMicron())) {
      add(
          "sanded-too-fine",
          Severity.WORK,
          "The wood is already finer than the finish asks for; it may take stain pale and hold a"
              + " film less well.",
          "Scuff it lightly with the finish's own grade, or try the finish on scrap sanded alike.");
    }
    if (request.wood().soft() && !start.light()) {
      add(
          "soft-wood",
          Severity.WORK,
          "Soft wood shows every scratch, so the finer half of the range is planned; guides"
              + " disagree where it will be stained.",
          "Use light pressure and fresh paper. For stain, try the coarser end on scrap too.");
    }
  }

  private void knifeMarks() {
    cautions.add(
        new Caution(
            "coarse-knife-marks",
            Severity.WORK,
            Message.of(
                "Knife marks further apart than {0} tear grain deeper than they look.",
                Quantity.of(SandingFigures.KNIFE_PITCH.high(), Unit.METRE)),
            Message.of("Feed slower or take a last light cut, and look for torn grain.")));
  }

  private void passes(SandingRequest request, SandingSchedule schedule) {
    boolean cami = false;
    boolean belt = false;
    for (SandingPass pass : schedule.passes()) {
      cami = cami || pass.grit().system() == GritSystem.CAMI;
      belt = belt || pass.tool() == SandingTool.BELT;
    }
    if (cami) {
      add(
          "two-scales",
          Severity.WORK,
          "A grade without a P is on another scale: above 220 the same number is much finer.",
          "Go by the label in this plan, scale and number together.");
    }
    if (belt) {
      add(
          "belt-digs",
          Severity.WORK,
          "A belt sander digs in within a second if tipped or stopped, and cuts through veneer.",
          "Start and stop it off the work, keep it flat and moving, along the grain.");
    }
    if (opensTooFine(request, schedule)) {
      add(
          "long-pass",
          Severity.WORK,
          "The first pass is long, and it already uses the coarsest grade on the shelf.",
          "A coarser grade may save time: ask which grade to buy.");
    }
  }

  private static boolean opensTooFine(SandingRequest request, SandingSchedule schedule) {
    if (schedule.passes().isEmpty()) {
      return false;
    }
    SandingPass first = schedule.passes().get(0);
    for (Grit grit : request.shop().shelf()) {
      if (grit.micron() > first.grit().micron()) {
        return false;
      }
    }
    double area = request.area().totalSquareMetre();
    return first.seconds() - SandingFigures.GRADE_CHANGE.low()
        > area * SandingFigures.LONG_PASS.low();
  }

  private void extras(SandingRequest request, SandingSchedule schedule) {
    if (request.wood().figured() && !schedule.passes().isEmpty()) {
      add(
          "figured-last-strokes",
          Severity.WORK,
          "Figured wood shows scratches from every side.",
          "Finish by hand on a block with the last grade, along the board, and look in raking"
              + " light.");
    }
    if (request.wood().openGrained() && !request.wanted().poresFilled()) {
      add(
          "pores-stay-open",
          Severity.WORK,
          "The pores of this wood will show as fine pits through any film.",
          "That is right for an open-pored look. For a flat film ask for filled pores.");
    }
    schedule.extras().grainRaising().ifPresent(raising -> knockOff());
    buy(request, schedule.extras());
  }

  private void knockOff() {
    add(
        "knock-off-lightly",
        Severity.WORK,
        "Sanding hard after wetting cuts new fibres, which stand up again under the first coat.",
        "Let it dry right through, then only take off the fuzz: two or three light strokes.");
  }

  private void buy(SandingRequest request, SandingExtras extras) {
    List<Grit> needed = new ArrayList<>();
    extras.endGrain().ifPresent(pass -> needed.add(pass.grit()));
    extras.betweenCoats().ifPresent(between -> needed.add(between.each().grit()));
    for (Grit grit : needed) {
      boolean there = request.shop().has(grit);
      if (!there && request.start() instanceof StartSurface.SandedTo sanded) {
        there = sanded.grit().equals(grit);
      }
      if (!there) {
        add(
            "grade-to-buy",
            Severity.WORK,
            grit.label() + " is planned for a side step but is not on the shelf.",
            "Buy it before you start, or use the nearest finer grade you have.");
      }
    }
  }

  private void add(String code, Severity severity, String what, String measure) {
    cautions.add(new Caution(code, severity, Message.of(what), Message.of(measure)));
  }
}
