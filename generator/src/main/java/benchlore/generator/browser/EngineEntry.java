package benchlore.generator.browser;

import benchlore.schedules.exchange.EngineJson;
import org.teavm.jso.JSExport;
import org.teavm.jso.JSObject;

/**
 * The engine as a page's script sees it: each function takes a plain object and returns one, as
 * {@link EngineJson} describes them. The page's own {@code engine-page.js} stands before it.
 */
public final class EngineEntry {
  private static final String VERSION = "0.2.0";

  private EngineEntry() {}

  private static JSObject answer(JSObject request, EngineJson.Call call) {
    PageSink sink = new PageSink();
    call.answer(new PageNode(request), sink);
    return sink.whole();
  }

  /** The version of the engine, such as {@code 0.2.0}. */
  @JSExport
  public static String engineVersion() {
    return VERSION;
  }

  /** See {@link EngineJson#sanding}. */
  @JSExport
  public static JSObject sanding(JSObject request) {
    return answer(request, EngineJson::sanding);
  }

  /** See {@link EngineJson#machineOrSand}. */
  @JSExport
  public static JSObject machineOrSand(JSObject request) {
    return answer(request, EngineJson::machineOrSand);
  }

  /** See {@link EngineJson#drying}. */
  @JSExport
  public static JSObject drying(JSObject request) {
    return answer(request, EngineJson::drying);
  }

  /** See {@link EngineJson#sheen}. */
  @JSExport
  public static JSObject sheen(JSObject request) {
    return answer(request, EngineJson::sheen);
  }

  /** See {@link EngineJson#glueUp}. */
  @JSExport
  public static JSObject glueUp(JSObject request) {
    return answer(request, EngineJson::glueUp);
  }

  /** See {@link EngineJson#air}. */
  @JSExport
  public static JSObject air(JSObject request) {
    return answer(request, EngineJson::air);
  }

  /** See {@link EngineJson#fit}. */
  @JSExport
  public static JSObject fit(JSObject request) {
    return answer(request, EngineJson::fit);
  }

  /** See {@link EngineJson#cutting}. */
  @JSExport
  public static JSObject cutting(JSObject request) {
    return answer(request, EngineJson::cutting);
  }

  /** See {@link EngineJson#surfacing}. */
  @JSExport
  public static JSObject surfacing(JSObject request) {
    return answer(request, EngineJson::surfacing);
  }

  /** See {@link EngineJson#climate}. */
  @JSExport
  public static JSObject climate(JSObject request) {
    return answer(request, EngineJson::climate);
  }

  /** See {@link EngineJson#room}. */
  @JSExport
  public static JSObject room(JSObject request) {
    return answer(request, EngineJson::room);
  }

  /** See {@link EngineJson#plan}. */
  @JSExport
  public static JSObject plan(JSObject request) {
    return answer(request, EngineJson::plan);
  }
}
