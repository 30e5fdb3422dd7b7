package benchlore.schedules.air;

import benchlore.schedules.answer.Caution;
import benchlore.schedules.answer.Caution.Severity;
import benchlore.schedules.answer.Message;

/** The cautions of sanding, one a row. */
enum DustWarning {
  LUNGS(
      "wood-dust-lungs",
      Severity.HEALTH,
      "Wood dust irritates, can sensitise, and over years can cause cancer of the nose; hardwoods"
          + " such as oak and beech are the worst.",
      "Catch it at the tool, wear a fitted particle mask until the air is clear, and follow the safety data sheet"
          + " of any film in the dust."),
  NO_CAPTURE(
      "dust-not-captured",
      Severity.HEALTH,
      "Nothing catches the dust.",
      "Put a vacuum on the sander; it takes out most of what a mask would have to hold back."),
  BEYOND_MASK(
      "dust-beyond-mask",
      Severity.HEALTH,
      "The air would hold more dust than a filtering mask is rated for.",
      "Catch the dust at the tool, or sand outdoors, before thinking of a mask."),
  SENSITISER(
      "sensitising-wood",
      Severity.HEALTH,
      "This wood can cause asthma or rashes, after which any later dust sets them off.",
      "Full capture, a fitted particle mask and covered skin from the first stroke; stop at the first tight chest."),
  SELF_HEATING(
      "self-heating-dust",
      Severity.DANGER,
      "Dust of oil films heats up by itself in the bag and can catch fire hours later.",
      "Empty bag and vacuum outdoors after each session, into a lidded metal can with water."),
  FIRE(
      "dust-fire",
      Severity.DANGER,
      "Fine dust burns fast, and stirred up it can explode, in a collector above all.",
      "No sparks from metal into the same bag, no flame in the room, earth the hose, and do not let"
          + " dust lie on ledges and floor."),
  CLEAN_UP(
      "dust-clean-up",
      Severity.HEALTH,
      "Blowing and dry sweeping put the dust back into the air.",
      "Vacuum with a high-efficiency filter or wipe damp, with a fitted particle mask still on.");

  private final String code;
  private final Severity severity;
  private final String what;
  private final String measure;

  DustWarning(String code, Severity severity, String what, String measure) {
    this.code = code;
    this.severity = severity;
    this.what = what;
    this.measure = measure;
  }

  Caution caution() {
    return new Caution(code, severity, Message.of(what), Message.of(measure));
  }
}
