package benchlore.schedules.exchange;

import benchlore.schedules.answer.Answer;
import benchlore.schedules.material.Pores;
import benchlore.schedules.sanding.BetweenCoats;
import benchlore.schedules.sanding.FinishLook;
import benchlore.schedules.sanding.GrainRaising;
import benchlore.schedules.sanding.Grit;
import benchlore.schedules.sanding.GritMatch;
import benchlore.schedules.sanding.GritSystem;
import benchlore.schedules.sanding.Grits;
import benchlore.schedules.sanding.MachineOrSandCurve;
import benchlore.schedules.sanding.MachineOrSandRequest;
import benchlore.schedules.sanding.MillingPass;
import benchlore.schedules.sanding.PoreFilling;
import benchlore.schedules.sanding.SandingArea;
import benchlore.schedules.sanding.SandingExtras;
import benchlore.schedules.sanding.SandingPass;
import benchlore.schedules.sanding.SandingRequest;
import benchlore.schedules.sanding.SandingSchedule;
import benchlore.schedules.sanding.SandingShop;
import benchlore.schedules.sanding.SandingTool;
import benchlore.schedules.sanding.SandingTotals;
import benchlore.schedules.sanding.SandingWood;
import benchlore.schedules.sanding.SawnBy;
import benchlore.schedules.sanding.ShelfAdvice;
import benchlore.schedules.sanding.StartSurface;
import benchlore.schedules.sanding.SurfaceWanted;

/** Sanding, and machining against it: requests and answers. */
final class SandingJson {
  private SandingJson() {}

  static Answer<GritMatch> converted(RequestReader f) {
    return Grits.convert(grit(f.group("grit")), f.word("system", GritSystem.values()));
  }

  static void match(AnswerWriter out, GritMatch match) {
    out.group("grit", match.grit(), SandingJson::grit).number("ratio", match.ratio());
  }

  static SandingRequest request(RequestReader f) {
    return request(f, surface(f.group("start")));
  }

  private static SandingRequest request(RequestReader f, StartSurface start) {
    RequestReader wood = f.group("wood");
    RequestReader area = f.group("area");
    return new SandingRequest(
        start,
        new SandingWood(
            wood.number("hardnessNewton"),
            wood.number("densityKilogramPerCubicMetre"),
            wood.word("pores", Pores.values()),
            wood.flag("openGrained"),
            wood.flag("figured"),
            wood.flag("resinous")),
        new SandingArea(
            area.number("totalSquareMetre"),
            area.number("endGrainSquareMetre"),
            area.whole("pieces")),
        wanted(f.group("wanted")),
        shop(f.group("shop")));
  }

  /** Milling and sanding; the surface sanding starts from may be left out, since it is not used. */
  static MachineOrSandRequest machineOrSand(RequestReader f) {
    RequestReader pass = f.group("milling");
    MillingPass milling =
        new MillingPass(
            pass.number("ballDiameterMetre"),
            pass.number("feedMetrePerSecond"),
            pass.number("finestStepoverMetre"),
            pass.number("coarsestStepoverMetre"),
            pass.number("machineWeight"));
    StartSurface start =
        new StartSurface.BallNose(milling.ballDiameterMetre(), milling.coarsestStepoverMetre());
    return new MachineOrSandRequest(milling, request(f.group("sanding"), start));
  }

  static void curve(AnswerWriter out, MachineOrSandCurve curve) {
    out.group("best", curve.best(), SandingJson::point)
        .list("points", curve.points(), SandingJson::point);
  }

  static void shelfAdvice(AnswerWriter out, ShelfAdvice advice) {
    out.number("nowSeconds", advice.nowSeconds())
        .list("offers", advice.offers(), SandingJson::offer);
  }

  private static void offer(AnswerWriter out, ShelfAdvice.Offer offer) {
    out.group("grit", offer.grit(), SandingJson::grit).number("thenSeconds", offer.thenSeconds());
  }

  private static void point(AnswerWriter out, MachineOrSandCurve.Point point) {
    out.number("stepoverMetre", point.stepoverMetre())
        .number("scallopMicron", point.scallopMicron())
        .number("machineSeconds", point.machineSeconds())
        .number("sandingSeconds", point.sandingSeconds())
        .number("weightedSeconds", point.weightedSeconds());
  }

  private static SurfaceWanted wanted(RequestReader f) {
    return new SurfaceWanted(
        f.figure("finalGrade"),
        f.word("look", FinishLook.values()),
        f.optionalFigure("betweenCoatGrade"),
        f.whole("coats"),
        f.flag("raisesGrain"),
        f.flag("poresFilled"));
  }

  static SandingShop shop(RequestReader f) {
    return new SandingShop(
        f.list("shelf", SandingJson::grit),
        f.words("tools", SandingTool.values()),
        f.number("jumpLimitRatio"));
  }

  private static Grit grit(RequestReader f) {
    int number = f.whole("number");
    return Grits.find(f.word("system", GritSystem.values()), number)
        .orElseThrow(() -> new IllegalArgumentException("no grade has the number " + number));
  }

  /** A surface; {@code surface} tells which variant the other keys belong to. */
  static StartSurface surface(RequestReader f) {
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

  static void schedule(AnswerWriter out, SandingSchedule schedule) {
    out.number("startDepthMicron", schedule.startDepthMicron())
        .list("passes", schedule.passes(), SandingJson::pass)
        .group("extras", schedule.extras(), SandingJson::extras)
        .group("totals", schedule.totals(), SandingJson::totals);
  }

  private static void extras(AnswerWriter out, SandingExtras extras) {
    out.optional("endGrain", extras.endGrain(), SandingJson::pass)
        .optional("grainRaising", extras.grainRaising(), SandingJson::raising)
        .optional("poreFilling", extras.poreFilling(), SandingJson::filling)
        .optional("betweenCoats", extras.betweenCoats(), SandingJson::between);
  }

  private static void raising(AnswerWriter out, GrainRaising raising) {
    out.number("wetSeconds", raising.wetSeconds())
        .group("drySeconds", raising.drySeconds(), AnswerJson::datum)
        .group("knockOff", raising.knockOff(), SandingJson::pass);
  }

  private static void filling(AnswerWriter out, PoreFilling filling) {
    out.number("packSeconds", filling.packSeconds())
        .group("level", filling.level(), SandingJson::pass)
        .group("when", filling.when(), AnswerJson::note);
  }

  private static void between(AnswerWriter out, BetweenCoats between) {
    out.group("each", between.each(), SandingJson::pass).number("times", between.times());
  }

  private static void totals(AnswerWriter out, SandingTotals totals) {
    out.number("seconds", totals.seconds())
        .number("faceSeconds", totals.faceSeconds())
        .number("discs", totals.discs())
        .number("removedMicron", totals.removedMicron())
        .number("dustKilogram", totals.dustKilogram());
  }

  private static void pass(AnswerWriter out, SandingPass pass) {
    out.group("grit", pass.grit(), SandingJson::grit)
        .word("tool", pass.tool())
        .number("seconds", pass.seconds())
        .number("discs", pass.discs())
        .number("discShare", pass.discShare())
        .number("depthMicron", pass.depthMicron())
        .number("removedMicron", pass.removedMicron());
  }

  static void grit(AnswerWriter out, Grit grit) {
    out.word("system", grit.system())
        .number("number", grit.number())
        .number("micron", grit.micron())
        .group("from", grit.from(), AnswerJson::provenance);
  }
}
