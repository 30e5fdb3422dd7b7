package benchlore.generator.browser;

import org.teavm.jso.JSExport;

/** The engine as a page's script sees it: text in, text out. */
public final class EngineEntry {
  private static final String VERSION = "0.1.0";

  private EngineEntry() {}

  /** The version of the engine, such as {@code 0.1.0}. */
  @JSExport
  public static String engineVersion() {
    return VERSION;
  }
}
