package benchlore.generator.browser;

import org.teavm.jso.JSExport;

/**
 * The engine as a page's script sees it: a request as JSON text in, the answer as JSON text out.
 *
 * <p>A request has the engine's own record fields as its keys, in SI units; a range is {@code
 * {"low":1,"high":2,"unit":"METRE","from":{"kind":"INPUT","title":"","where":""}}}, a moment is ISO
 * 8601 local time, what is absent is left out or {@code null}. An answer has {@code given} true
 * with {@code value}, {@code working} and {@code cautions}, or false with {@code reasons} (refused
 * by a rule) or {@code broken} (not a request).
 */
public final class EngineEntry {
  private static final String VERSION = "0.1.0";

  private EngineEntry() {}

  /** The version of the engine, such as {@code 0.1.0}. */
  @JSExport
  public static String engineVersion() {
    return VERSION;
  }

  /** Plans sanding; keys as {@link benchlore.schedules.sanding.SandingRequest}. */
  @JSExport
  public static String sanding(String request) {
    return SandingText.plan(request);
  }

  /** Times one coat; keys as {@link benchlore.schedules.coating.DryingRequest}. */
  @JSExport
  public static String drying(String request) {
    return DryingText.plan(request);
  }

  /** Plans a glue-up; keys as {@link benchlore.schedules.glueup.GlueUpRequest}. */
  @JSExport
  public static String glueUp(String request) {
    return GlueUpText.plan(request);
  }

  /** Works out the shop's air; keys as {@link benchlore.schedules.air.AirRequest}. */
  @JSExport
  public static String air(String request) {
    return AirText.plan(request);
  }

  /** Works out movement and gaps; keys as {@link benchlore.schedules.wood.FitRequest}. */
  @JSExport
  public static String fit(String request) {
    return FitText.plan(request);
  }

  /** Sets speed, feed and passes; keys as {@link benchlore.schedules.cutting.CuttingRequest}. */
  @JSExport
  public static String cutting(String request) {
    return CuttingText.plan(request);
  }

  /** Plans a project; keys as {@link benchlore.schedules.plan.PlanRequest}. */
  @JSExport
  public static String plan(String request) {
    return ProjectText.plan(request);
  }
}
