package benchlore.schedules.material;

import benchlore.schedules.quantity.SourcedRange;
import java.util.List;
import java.util.Optional;

/**
 * A generic finish as the engine sees it. Times hold in the reference air and for one coat of
 * {@link #wetFilmMicron}; a product's own label always wins.
 *
 * <p>The six stage times are required of a {@link FinishRole#FILM film} or {@link
 * FinishRole#PENETRATING penetrating} finish and may be absent from the others; an entry that needs
 * an absent one refuses and names it.
 *
 * @param family what it is made of
 * @param role what it is for
 * @param mechanisms how it dries, at least one; the first governs drying, the last full cure
 * @param bond how it holds to its own last coat
 * @param touchDry seconds until a light touch leaves no mark
 * @param recoatOpens seconds until the next coat may go on
 * @param sandAfter seconds until it sands to powder
 * @param handleAfter seconds until it can be picked up and turned
 * @param lightUse seconds until careful use
 * @param fullCure seconds until hard, resistant, and fit for rubbing out
 * @param recoatCloses seconds after which the next coat needs a scuffed surface
 * @param stackAfter seconds until faces may touch: stacking, assembly
 * @param potLife seconds a mixed batch stays usable
 * @param referenceCelsius air temperature the times hold in, deg C
 * @param referenceHumidityPercent relative humidity the times hold in
 * @param minimumCelsius coldest air and surface while wet, deg C; the high end is taken
 * @param maximumCelsius hottest air and surface while wet, deg C; the low end is taken
 * @param maximumHumidityPercent dampest air while wet; the low end is taken
 * @param minimumHumidityPercent driest air while wet, for moisture cure; the high end is taken
 * @param solidsVolumePercent what stays behind, percent of the volume
 * @param densityKilogramPerCubicMetre density of the liquid
 * @param wetFilmMicron wet film of one coat, micrometres
 * @param coats usual number of coats
 * @param maximumDryFilmMicron thickest sound dry film of all coats, micrometres
 * @param voc mass of solvent in the liquid, kg a cubic metre (grams a litre)
 * @param rateQ10 factor on the rate for 10 deg C; else the table of the mechanism
 * @param flashPointCelsius flash point, deg C
 * @param solvents what evaporates, with mass shares; may be empty
 * @param methods how it may be applied
 * @param sheens the sheens it is sold in; may be empty
 * @param raisesGrain whether the first coat raises the grain
 * @param selfHeatingRags whether wet rags heat up by themselves and catch fire
 * @param isocyanate whether it holds isocyanate
 * @param finalGrade last sanding grade before the first coat, P grade, unit COUNT
 * @param betweenCoatGrade sanding grade between coats, P grade, unit COUNT
 * @param places where it lasts
 */
public record Finish(
    FinishFamily family,
    FinishRole role,
    List<DryingMechanism> mechanisms,
    CoatBond bond,
    Optional<SourcedRange> touchDry,
    Optional<SourcedRange> recoatOpens,
    Optional<SourcedRange> sandAfter,
    Optional<SourcedRange> handleAfter,
    Optional<SourcedRange> lightUse,
    Optional<SourcedRange> fullCure,
    Optional<SourcedRange> recoatCloses,
    Optional<SourcedRange> stackAfter,
    Optional<SourcedRange> potLife,
    SourcedRange referenceCelsius,
    SourcedRange referenceHumidityPercent,
    SourcedRange minimumCelsius,
    SourcedRange maximumCelsius,
    SourcedRange maximumHumidityPercent,
    Optional<SourcedRange> minimumHumidityPercent,
    SourcedRange solidsVolumePercent,
    SourcedRange densityKilogramPerCubicMetre,
    SourcedRange wetFilmMicron,
    SourcedRange coats,
    Optional<SourcedRange> maximumDryFilmMicron,
    SourcedRange voc,
    Optional<SourcedRange> rateQ10,
    Optional<SourcedRange> flashPointCelsius,
    List<SolventShare> solvents,
    List<ApplicationMethod> methods,
    List<Sheen> sheens,
    boolean raisesGrain,
    boolean selfHeatingRags,
    boolean isocyanate,
    SourcedRange finalGrade,
    SourcedRange betweenCoatGrade,
    List<UsePlace> places) {
  /**
   * Whether a coat is sanded before the next: not where that melts in or takes hold at any time.
   */
  public boolean sandedBetweenCoats() {
    return bond != CoatBond.MELTS_IN && bond != CoatBond.ANY_TIME;
  }

  /** Copies the lists; refuses nulls and a finish that dries by nothing. */
  public Finish {
    mechanisms = List.copyOf(mechanisms);
    solvents = List.copyOf(solvents);
    methods = List.copyOf(methods);
    sheens = List.copyOf(sheens);
    places = List.copyOf(places);
    if (mechanisms.isEmpty()) {
      throw new IllegalArgumentException("mechanisms must not be empty");
    }
    named("family", family);
    named("role", role);
    named("bond", bond);
    named("touchDry", touchDry);
    named("recoatOpens", recoatOpens);
    named("sandAfter", sandAfter);
    named("handleAfter", handleAfter);
    named("lightUse", lightUse);
    named("fullCure", fullCure);
    named("recoatCloses", recoatCloses);
    named("stackAfter", stackAfter);
    named("potLife", potLife);
    named("referenceCelsius", referenceCelsius);
    named("referenceHumidityPercent", referenceHumidityPercent);
    named("minimumCelsius", minimumCelsius);
    named("maximumCelsius", maximumCelsius);
    named("maximumHumidityPercent", maximumHumidityPercent);
    named("minimumHumidityPercent", minimumHumidityPercent);
    named("solidsVolumePercent", solidsVolumePercent);
    named("densityKilogramPerCubicMetre", densityKilogramPerCubicMetre);
    named("wetFilmMicron", wetFilmMicron);
    named("coats", coats);
    named("maximumDryFilmMicron", maximumDryFilmMicron);
    named("voc", voc);
    named("rateQ10", rateQ10);
    named("flashPointCelsius", flashPointCelsius);
    named("finalGrade", finalGrade);
    named("betweenCoatGrade", betweenCoatGrade);
  }

  private static void named(String name, Object value) {
    if (value == null) {
      throw new NullPointerException(name);
    }
  }

  /** The mechanism that governs drying up to handling. */
  public DryingMechanism dryingMechanism() {
    return mechanisms.get(0);
  }

  /** The mechanism that governs full cure. */
  public DryingMechanism cureMechanism() {
    return mechanisms.get(mechanisms.size() - 1);
  }
}
