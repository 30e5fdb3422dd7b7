package benchlore.schedules.exchange;

import benchlore.schedules.coating.CoatedArea;
import benchlore.schedules.coating.QuantityRequest;
import benchlore.schedules.coating.SheenPlan;
import benchlore.schedules.coating.SheenRequest;
import benchlore.schedules.coating.SheenStep;
import benchlore.schedules.coating.SheenWay;
import benchlore.schedules.coating.Supplies;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.SprayGun;

/** Ways to a sheen: request and answer. */
final class SheenJson {
  private SheenJson() {}

  static SheenRequest request(RequestReader f) {
    RequestReader job = f.group("job");
    RequestReader area = job.group("area");
    return new SheenRequest(
        new QuantityRequest(
            Finish.table().read(job.group("finish")),
            new CoatedArea(
                area.number("faceSquareMetre"),
                area.number("edgeSquareMetre"),
                area.flag("bothFaces")),
            job.whole("coats"),
            job.number("wetFilmMicron"),
            job.word("method", ApplicationMethod.values()),
            job.word("gun", SprayGun.values()),
            job.optionalNumber("transfer")),
        f.moment("lastCoat"),
        f.moment("today"),
        DryingJson.climate(f.group("climate")),
        f.optionalWord("existing", Sheen.values()),
        f.word("wanted", Sheen.values()));
  }

  static void plan(AnswerWriter out, SheenPlan plan) {
    out.list("ways", plan.ways(), SheenJson::way)
        .group("glossUnits", plan.glossUnits(), AnswerJson::datum);
  }

  private static void way(AnswerWriter out, SheenWay way) {
    out.word("kind", way.kind())
        .moment("from", way.from())
        .list("steps", way.steps(), SheenJson::step);
  }

  private static void step(AnswerWriter out, SheenStep step) {
    out.word("what", step.what())
        .number("grade", step.grade())
        .number("seconds", step.seconds())
        .group("supplies", step.supplies(), SheenJson::supplies)
        .word("sheen", step.sheen());
  }

  private static void supplies(AnswerWriter out, Supplies supplies) {
    out.number("liquidCubicMetre", supplies.liquidCubicMetre())
        .number("sheets", supplies.sheets())
        .number("compoundKilogram", supplies.compoundKilogram());
  }
}
