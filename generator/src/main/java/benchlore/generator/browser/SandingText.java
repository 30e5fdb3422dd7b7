package benchlore.generator.browser;

import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.Pores;
import benchlore.schedules.sanding.Sanding;
import benchlore.schedules.sanding.SandingArea;
import benchlore.schedules.sanding.SandingPass;
import benchlore.schedules.sanding.SandingRequest;
import benchlore.schedules.sanding.SandingSchedule;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.sanding.SandingTool;
import benchlore.schedules.sanding.SandingWood;
import benchlore.schedules.sanding.SawnBy;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.sanding.SurfaceWanted;

/** Sanding: request text to answer text. */
final class SandingText {
  private SandingText() {}

  static String plan(String request) {
    return Answers.text(request, f -> Sanding.plan(request(f)), SandingText::schedule);
  }

  private static SandingRequest request(Asked f) {
    Asked wood = f.group("wood");
    Asked area = f.group("area");
    return new SandingRequest(
        surface(f.group("start")),
        new SandingWood(
            wood.number("hardnessNewton"),
            wood.number("densityKilogramPerCubicMetre"),
            wood.word("pores", Pores.values()),
            wood.flag("figured"),
            wood.flag("resinous")),
        new SandingArea(area.number("totalSquareMetre"), area.number("endGrainSquareMetre")),
        wanted(f.group("wanted")),
        shop(f.group("shop")));
  }

  private static SurfaceWanted wanted(Asked f) {
    return new SurfaceWanted(
        f.datum("finalGrade"),
        f.optionalDatum("betweenCoatGrade"),
        f.whole("coats"),
        f.flag("raisesGrain"),
        f.flag("poresFilled"));
  }

  static SandingShop shop(Asked f) {
    return new SandingShop(
        f.list("shelf", SandingText::grit),
        f.words("tools", SandingTool.values()),
        f.number("jumpLimitRatio"));
  }

  private static Grit grit(Asked f) {
    int number = f.whole("number");
    return Grits.find(f.word("system", GritSystem.values()), number)
        .orElseThrow(() -> new IllegalArgumentException("no grade has the number " + number));
  }

  /** A surface; {@code surface} tells which variant the other keys belong to. */
  static StartSurface surface(Asked f) {
    String variant = f.text("surface");
    return switch (variant) {
      case "Sawn" -> new StartSurface.Sawn(f.word("by", SawnBy.values()));
      case "Planed" ->
          new StartSurface.Planed(f.number("knifePitchMetre"), f.number("cutterRadiusMetre"));
      case "BallNose" ->
          new StartSurface.BallNose(f.number("ballDiameterMetre"), f.number("stepoverMetre"));
      case "StraightCut" ->
          new StartSurface.StraightCut(f.number("bitDiameterMetre"), f.number("feedPerFluteMetre"));
      case "TornGrain" -> new StartSurface.TornGrain(f.number("depthMicron"));
      case "OldFilm" ->
          new StartSurface.OldFilm(
              f.number("filmMicron"), f.word("fate", StartSurface.OldFilm.Fate.values()));
      case "SandedTo" -> new StartSurface.SandedTo(grit(f.group("grit")));
      default -> throw new IllegalArgumentException("no surface is called " + variant);
    };
  }

  private static void schedule(JsonWriter out, SandingSchedule schedule) {
    out.number("startDepthMicron", schedule.startDepthMicron())
        .list("passes", schedule.passes(), (w, pass) -> w.group("", pass, SandingText::pass))
        .optional("endGrain", schedule.extras().endGrain(), SandingText::pass)
        .optional(
            "grainRaising",
            schedule.extras().grainRaising(),
            (w, raising) ->
                w.number("wetSeconds", raising.wetSeconds())
                    .group("knockOff", raising.knockOff(), SandingText::pass))
        .optional(
            "poreFilling",
            schedule.extras().poreFilling(),
            (w, filling) ->
                w.number("packSeconds", filling.packSeconds())
                    .group("level", filling.level(), SandingText::pass))
        .optional(
            "betweenCoats",
            schedule.extras().betweenCoats(),
            (w, between) ->
                w.number("times", between.times()).group("each", between.each(), SandingText::pass))
        .number("seconds", schedule.totals().seconds())
        .number("discs", schedule.totals().discs())
        .number("dustKilogram", schedule.totals().dustKilogram());
  }

  private static void pass(JsonWriter out, SandingPass pass) {
    out.text("grit", pass.grit().label())
        .word("tool", pass.tool())
        .number("seconds", pass.seconds())
        .number("discs", pass.discs())
        .number("discShare", pass.discShare())
        .number("depthMicron", pass.depthMicron())
        .number("removedMicron", pass.removedMicron());
  }
}
