package benchlore.schedules.exchange;

import benchlore.schedules.air.Release;
import benchlore.schedules.material.Adhesive;
import benchlore.schedules.material.ApplicationMethod;
import benchlore.schedules.material.CoatBond;
import benchlore.schedules.material.DryingMechanism;
import benchlore.schedules.material.Finish;
import benchlore.schedules.material.FinishFamily;
import benchlore.schedules.material.FinishRole;
import benchlore.schedules.material.Pores;
import benchlore.schedules.material.Sheen;
import benchlore.schedules.material.Solvent;
import benchlore.schedules.material.SolventShare;
import benchlore.schedules.material.Species;
import benchlore.schedules.material.UsePlace;

/** Reads the data of single records: wood, adhesive, finish, solvent, keys as their components. */
final class MaterialReader {
  private MaterialReader() {}

  static Species wood(RequestReader f) {
    return new Species(
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

  static Adhesive adhesive(RequestReader f) {
    return new Adhesive(
        f.word("family", Adhesive.Family.values()),
        f.word("setting", Adhesive.Setting.values()),
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
        f.word("oilyWoods", Adhesive.OilyWoods.values()),
        f.word("waterResistance", Adhesive.WaterResistance.values()),
        f.flag("creeps"));
  }

  static Finish finish(RequestReader f) {
    return new Finish(
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

  static Release.Share share(RequestReader f) {
    return new Release.Share(solvent(f.group("solvent")), f.number("massShare"));
  }

  private static Solvent solvent(RequestReader f) {
    return new Solvent(
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
