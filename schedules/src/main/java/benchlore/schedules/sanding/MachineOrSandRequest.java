package benchlore.schedules.sanding;

/**
 * Machine longer or sand longer?
 *
 * @param milling the finishing pass
 * @param sanding the sanding after it; its start surface is left out of account
 */
public record MachineOrSandRequest(MillingPass milling, SandingRequest sanding) {
  /** Refuses nulls; figures are checked by the plan. */
  public MachineOrSandRequest {
    if (milling == null || sanding == null) {
      throw new NullPointerException("milling and sanding");
    }
  }
}
