package benchlore.schedules.exchange;

import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.glueup.GlueUpSchedule;
import benchlore.schedules.material.Adhesive;

/** A glue-up: request and answer. */
final class GlueUpJson {
  private GlueUpJson() {}

  static GlueUpRequest request(RequestReader f) {
    RequestReader wood = f.group("wood");
    RequestReader pace = f.group("pace");
    return new GlueUpRequest(
        Adhesive.table().read(f.group("adhesive")),
        f.list("joints", GlueUpJson::joint),
        new GlueUpRequest.Wood(
            wood.number("densityKilogramPerCubicMetre"),
            wood.flag("oily"),
            wood.numbers("moisturePercents"),
            wood.number("sinceMachinedSecond")),
        clamps(f.group("clamps")),
        DryingJson.climate(f.group("climate")),
        f.moment("start"),
        new GlueUpRequest.Pace(
            pace.number("perJointSecond"),
            pace.number("perSquareMetreSecond"),
            pace.number("perClampSecond"),
            pace.whole("people")));
  }

  private static GlueUpRequest.Joint joint(RequestReader f) {
    return new GlueUpRequest.Joint(
        f.text("name"),
        f.number("lengthMetre"),
        f.number("widthMetre"),
        f.whole("count"),
        f.word("arrangement", GlueUpRequest.Arrangement.values()),
        f.number("backingMetre"),
        f.number("gapMetre"));
  }

  static GlueUpRequest.Clamps clamps(RequestReader f) {
    return new GlueUpRequest.Clamps(
        f.whole("count"),
        f.number("forceNewton"),
        f.number("caulDepthMetre"),
        f.number("headMetre"));
  }

  static void schedule(AnswerWriter out, GlueUpSchedule schedule) {
    out.group("glue", schedule.glue(), GlueUpJson::glue)
        .group("assembly", schedule.assembly(), GlueUpJson::assembly)
        .group("pressure", schedule.pressure(), GlueUpJson::pressure)
        .list("rows", schedule.rows(), GlueUpJson::row)
        .list("batches", schedule.batches(), GlueUpJson::batch)
        .group("clampsOff", schedule.clampsOff(), GlueUpJson::moment)
        .group("handle", schedule.handle(), GlueUpJson::moment)
        .group("machine", schedule.machine(), GlueUpJson::moment)
        .group("fullLoad", schedule.fullLoad(), GlueUpJson::moment);
  }

  private static void glue(AnswerWriter out, GlueUpSchedule.Glue glue) {
    out.number("areaSquareMetre", glue.areaSquareMetre())
        .number("massKilogram", glue.massKilogram())
        .number("volumeCubicMetre", glue.volumeCubicMetre())
        .number("perFaceKilogramPerSquareMetre", glue.perFaceKilogramPerSquareMetre());
  }

  private static void assembly(AnswerWriter out, GlueUpSchedule.Assembly assembly) {
    out.number("waitSecond", assembly.waitSecond())
        .number("openSecond", assembly.openSecond())
        .number("closedSecond", assembly.closedSecond())
        .number("totalSecond", assembly.totalSecond());
  }

  private static void pressure(AnswerWriter out, GlueUpSchedule.Pressure pressure) {
    out.word("density", pressure.density())
        .number("lowPascal", pressure.lowPascal())
        .number("highPascal", pressure.highPascal())
        .number("targetPascal", pressure.targetPascal());
  }

  private static void moment(AnswerWriter out, GlueUpSchedule.Milestone moment) {
    out.moment("at", moment.at()).number("afterSecond", moment.afterSecond());
  }

  private static void row(AnswerWriter out, GlueUpSchedule.Row row) {
    out.text("joint", row.joint())
        .number("neededForForce", row.neededForForce())
        .number("neededForSpacing", row.neededForSpacing())
        .word("governs", row.governs())
        .number("count", row.count())
        .number("forceEachNewton", row.forceEachNewton())
        .number("pressurePascal", row.pressurePascal())
        .number("spacingLimitMetre", row.spacingLimitMetre())
        .list(
            "positions",
            row.positions(),
            (o, at) -> o.number("alongMetre", at.alongMetre()).flag("under", at.under()));
  }

  private static void batch(AnswerWriter out, GlueUpSchedule.Batch batch) {
    out.list(
            "shares",
            batch.shares(),
            (o, share) -> o.text("joint", share.joint()).number("count", share.count()))
        .word("order", batch.order())
        .number("clamps", batch.clamps())
        .number("massKilogram", batch.massKilogram())
        .moment("start", batch.start())
        .number("spreadSecond", batch.spreadSecond())
        .number("closeSecond", batch.closeSecond())
        .moment("tight", batch.tight())
        .moment("clampsOff", batch.clampsOff());
  }
}
