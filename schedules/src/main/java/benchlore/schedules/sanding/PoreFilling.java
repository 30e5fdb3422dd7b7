package benchlore.schedules.sanding;

import benchlore.schedules.answer.Message;

/**
 * Fill the pores so that the film lies flat.
 *
 * @param packSeconds to spread the filler, pack it across the grain and wipe it off
 * @param level the light pass that levels it, once dry by its label
 * @param when where it stands among the other steps
 */
public record PoreFilling(double packSeconds, SandingPass level, Message when) {}
