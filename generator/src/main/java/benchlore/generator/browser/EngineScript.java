package benchlore.generator.browser;

import org.teavm.jso.JSExportClasses;

/** Where the compiler to JavaScript starts; running it does nothing. */
@JSExportClasses(EngineEntry.class)
public final class EngineScript {
  private EngineScript() {}

  /** Does nothing: the exported functions are called by a page. */
  public static void main(String[] args) {}
}
