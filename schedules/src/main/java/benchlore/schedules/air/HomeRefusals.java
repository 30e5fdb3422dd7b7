package benchlore.schedules.air;

import benchlore.schedules.answer.Checks;
import benchlore.schedules.material.Solvent;

/**
 * What no plan is given for, whatever the ventilation. Sources: HSE body-shop pages (two-pack
 * sprayed: air-fed apparatus only); US EPA rule on methylene chloride, 89 FR 39254, 8 May 2024,
 * effective 8 July 2024; 29 CFR 1910.107(c) on open flames, hot surfaces and sparks near spraying.
 */
final class HomeRefusals {
  private static final String CHLORINATED = "methylene-chloride";

  private HomeRefusals() {}

  static void check(AirRequest request, Checks checks) {
    sprayedIsocyanate(request.isocyanate() && request.sprays(), checks);
    for (Solvent solvent : request.solvents()) {
      solvent(solvent, checks);
    }
    boolean flammable = Flammability.any(request);
    for (IgnitionSource source : IgnitionSource.values()) {
      if (request.ignitionSources().contains(source)) {
        ignition(source, flammable, request.sprays(), checks);
      }
    }
  }

  static void sprayedIsocyanate(boolean sprayed, Checks checks) {
    checks.require(
        !sprayed,
        "isocyanate",
        "Sprayed isocyanates can cause asthma for life after one job, and no cartridge mask stops"
            + " them reliably.",
        "Have a licensed finishing shop with supplied air spray it, or choose a finish without"
            + " isocyanates.");
  }

  private static void solvent(Solvent solvent, Checks checks) {
    if (solvent.id().equals(CHLORINATED)) {
      checks.require(
          false,
          "releases.shares",
          "Methylene chloride has killed people stripping finish in closed rooms; its sale to the"
              + " public is banned in the US since the rule of 8 May 2024.",
          "Scrape or sand the old finish, use a remover without it, or take the piece to a"
              + " licensed stripping shop.");
      return;
    }
    checks.require(
        !solvent.refusedAtHome(),
        "releases.shares",
        "The solvent " + solvent.id() + " is not for a home shop.",
        "Choose a product without it, or give the work to a licensed finishing shop with supplied"
            + " air.");
  }

  private static void ignition(
      IgnitionSource source, boolean flammable, boolean sprays, Checks checks) {
    if (source == IgnitionSource.UNVENTED_FUEL_HEATER) {
      checks.require(
          false,
          "ignitionSources",
          "An unvented fuel heater is an open flame, gives off carbon monoxide and wets the air.",
          "Take it out of the building. Heat beforehand, or with a flued or sealed heater whose"
              + " flame takes its air from outdoors.");
      return;
    }
    if (source.kind() == IgnitionSource.Kind.FLAME && flammable) {
      checks.require(
          false,
          "ignitionSources",
          "The room holds "
              + source.words()
              + ", which lights flammable vapour; one of unknown flash"
              + " point counts as flammable.",
          "Shut it off and let it go cold before opening the can, and keep it off until the"
              + " film is dry; if it cannot be shut off, work elsewhere.");
    }
    if (source.kind() == IgnitionSource.Kind.SPARK && flammable && sprays) {
      checks.require(
          false,
          "ignitionSources",
          "The room holds " + source.words() + " within reach of flammable spray.",
          "Have a licensed finishing shop with rated equipment spray it, or brush or wipe instead,"
              + " with that equipment off.");
    }
  }
}
