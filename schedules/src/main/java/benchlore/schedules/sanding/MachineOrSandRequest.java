package benchlore.schedules.sanding;

import java.util.Objects;

/**
 * Machine longer or sand longer?
 *
 * @param milling the finishing pass
 * @param sanding the sanding after it; its start surface is left out of account
 */
public record MachineOrSandRequest(MillingPass milling, SandingRequest sanding) {
  /** Refuses nulls; figures are checked by the plan. */
  public MachineOrSandRequest {
    Objects.requireNonNull(milling, "milling");
    Objects.requireNonNull(sanding, "sanding");
  }
}
