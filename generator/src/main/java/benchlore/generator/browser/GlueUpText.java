package benchlore.generator.browser;

import benchlore.schedules.glueup.GlueUp;
import benchlore.schedules.glueup.GlueUpRequest;
import benchlore.schedules.glueup.GlueUpSchedule;

/** A glue-up: request text to answer text. */
final class GlueUpText {
  private GlueUpText() {}

  static String plan(String request) {
    return Answers.text(request, f -> GlueUp.plan(request(f)), GlueUpText::schedule);
  }

  private static GlueUpRequest request(Asked f) {
    Asked wood = f.group("wood");
    Asked pace = f.group("pace");
    return new GlueUpRequest(
        RecordData.adhesive(f.group("adhesive")),
        f.list("joints", GlueUpText::joint),
        new GlueUpRequest.Wood(
            wood.number("densityKilogramPerCubicMetre"),
            wood.flag("oily"),
            wood.numbers("moisturePercents"),
            wood.number("sinceMachinedSecond")),
        clamps(f.group("clamps")),
        DryingText.climate(f.group("climate")),
        f.moment("start"),
        new GlueUpRequest.Pace(
            pace.number("perJointSecond"),
            pace.number("perSquareMetreSecond"),
            pace.number("perClampSecond"),
            pace.whole("people")));
  }

  private static GlueUpRequest.Joint joint(Asked f) {
    return new GlueUpRequest.Joint(
        f.text("name"),
        f.number("lengthMetre"),
        f.number("widthMetre"),
        f.whole("count"),
        f.word("arrangement", GlueUpRequest.Arrangement.values()),
        f.number("backingMetre"),
        f.number("gapMetre"));
  }

  static GlueUpRequest.Clamps clamps(Asked f) {
    return new GlueUpRequest.Clamps(
        f.whole("count"),
        f.number("forceNewton"),
        f.number("caulDepthMetre"),
        f.number("headMetre"));
  }

  private static void schedule(JsonWriter out, GlueUpSchedule schedule) {
    out.number("massKilogram", schedule.glue().massKilogram())
        .number("volumeCubicMetre", schedule.glue().volumeCubicMetre())
        .number("openSecond", schedule.assembly().openSecond())
        .number("closedSecond", schedule.assembly().closedSecond())
        .number("totalSecond", schedule.assembly().totalSecond())
        .number("targetPascal", schedule.pressure().targetPascal())
        .list("rows", schedule.rows(), GlueUpText::row)
        .list("batches", schedule.batches(), GlueUpText::batch)
        .moment("clampsOff", schedule.clampsOff().at())
        .moment("handle", schedule.handle().at())
        .moment("machine", schedule.machine().at())
        .moment("fullLoad", schedule.fullLoad().at());
  }

  private static void row(JsonWriter out, GlueUpSchedule.Row row) {
    out.open("")
        .text("joint", row.joint())
        .word("governs", row.governs())
        .number("count", row.count())
        .number("forceEachNewton", row.forceEachNewton())
        .number("pressurePascal", row.pressurePascal())
        .list(
            "positions",
            row.positions(),
            (w, at) ->
                w.open("").number("alongMetre", at.alongMetre()).flag("under", at.under()).close())
        .close();
  }

  private static void batch(JsonWriter out, GlueUpSchedule.Batch batch) {
    out.open("")
        .list(
            "shares",
            batch.shares(),
            (w, share) ->
                w.open("").text("joint", share.joint()).number("count", share.count()).close())
        .word("order", batch.order())
        .number("clamps", batch.clamps())
        .number("massKilogram", batch.massKilogram())
        .moment("start", batch.start())
        .number("spreadSecond", batch.spreadSecond())
        .number("closeSecond", batch.closeSecond())
        .moment("tight", batch.tight())
        .moment("clampsOff", batch.clampsOff())
        .close();
  }
}
