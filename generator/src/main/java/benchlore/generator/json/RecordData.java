package benchlore.generator.json;

import benchlore.schedules.air.Release;
import benchlore.schedules.air.SolventData;
import benchlore.schedules.coating.CoatBond;
import benchlore.schedules.coating.DryingMechanism;
import benchlore.schedules.coating.FinishData;
import benchlore.schedules.coating.FinishFamily;
import benchlore.schedules.coating.FinishRole;
import benchlore.schedules.coating.Sheen;
import benchlore.schedules.coating.SolventShare;
import benchlore.schedules.coating.UsePlace;
import benchlore.schedules.glueup.AdhesiveData;
import benchlore.schedules.trade.ApplicationMethod;
import benchlore.schedules.trade.Pores;
import benchlore.schedules.wood.WoodData;

/** Reads the data of single records: wood, adhesive, finish, solvent, keys as their components. */
final class RecordData {
  private RecordData() {}

  static WoodData wood(Asked f) {
    return new WoodData(
        f.datum("specificGravity"),
        f.optionalDatum("hardness"),
        f.datum("radialShrinkage"),
        f.datum("tangentialShrinkage"),
        f.optionalDatum("movementRadial"),
        f.optionalDatum("movementTangential"),
        f.word("pores", Pores.values()),
        f.flag("openGrained"),
        f.flag("oily"),
        f.flag("figuredOrBlotchy"),
        f.flag("hardwood"),
        f.flag("tannin"));
  }

  static AdhesiveData adhesive(Asked f) {
    return new AdhesiveData(
        f.word("family", AdhesiveData.Family.values()),
        f.word("setting", AdhesiveData.Setting.values()),
        f.flag("waterBased"),
        f.datum("openTime"),
        f.optionalDatum("closedTime"),
        f.datum("clampTime"),
        f.datum("handleAfter"),
        f.datum("fullStrength"),
        f.optionalDatum("machineAfter"),
        f.datum("referenceCelsius"),
        f.datum("minimumCelsius"),
        f.optionalDatum("maximumCelsius"),
        f.datum("spread"),
        f.datum("density"),
        f.datum("pressureSoftwood"),
        f.datum("pressureMedium"),
        f.datum("pressureHardwood"),
        f.datum("maximumGapMetre"),
        f.optionalDatum("rateQ10"),
        f.optionalDatum("potLife"),
        f.word("oilyWoods", AdhesiveData.OilyWoods.values()),
        f.word("waterResistance", AdhesiveData.WaterResistance.values()),
        f.flag("creeps"));
  }

  static FinishData finish(Asked f) {
    return new FinishData(
        f.word("family", FinishFamily.values()),
        f.word("role", FinishRole.values()),
        f.words("mechanisms", DryingMechanism.values()),
        f.word("bond", CoatBond.values()),
        f.optionalDatum("touchDry"),
        f.optionalDatum("recoatOpens"),
        f.optionalDatum("sandAfter"),
        f.optionalDatum("handleAfter"),
        f.optionalDatum("lightUse"),
        f.optionalDatum("fullCure"),
        f.optionalDatum("recoatCloses"),
        f.optionalDatum("stackAfter"),
        f.optionalDatum("potLife"),
        f.datum("referenceCelsius"),
        f.datum("referenceHumidityPercent"),
        f.datum("minimumCelsius"),
        f.datum("maximumCelsius"),
        f.datum("maximumHumidityPercent"),
        f.optionalDatum("minimumHumidityPercent"),
        f.datum("solidsVolumePercent"),
        f.datum("densityKilogramPerCubicMetre"),
        f.datum("wetFilmMicron"),
        f.datum("coats"),
        f.optionalDatum("maximumDryFilmMicron"),
        f.datum("voc"),
        f.optionalDatum("rateQ10"),
        f.optionalDatum("flashPointCelsius"),
        f.list("solvents", s -> new SolventShare(s.text("solvent"), s.number("massShare"))),
        f.words("methods", ApplicationMethod.values()),
        f.words("sheens", Sheen.values()),
        f.flag("raisesGrain"),
        f.flag("selfHeatingRags"),
        f.flag("isocyanate"),
        f.datum("finalGrade"),
        f.datum("betweenCoatGrade"),
        f.words("places", UsePlace.values()));
  }

  static Release.Share share(Asked f) {
    return new Release.Share(solvent(f.group("solvent")), f.number("massShare"));
  }

  private static SolventData solvent(Asked f) {
    return new SolventData(
        f.text("id"),
        f.datum("molarMass"),
        f.datum("density"),
        f.optionalDatum("boilingPoint"),
        f.optionalDatum("flashPoint"),
        f.optionalDatum("lowerExplosiveLimit"),
        f.optionalDatum("upperExplosiveLimit"),
        f.optionalDatum("vapourPressure"),
        f.optionalDatum("oshaLimit"),
        f.optionalDatum("nioshLimit"),
        f.optionalDatum("idlh"),
        f.optionalDatum("evaporationRate"),
        f.flag("refusedAtHome"));
  }
}
