package benchlore.generator.browser;

import benchlore.schedules.exchange.Sink;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;

/**
 * Builds a plain object of a page's script. What is open is kept in a list of the page's own: one
 * of Java's would wrap every object put into it, which takes as long as planning.
 */
final class PageSink implements Sink {
  private final JSObject open = list();
  private JSObject last = list();

  PageSink() {
    put(open, "", last);
  }

  /** What was written. */
  JSObject whole() {
    return item(last, 0);
  }

  @Override
  public void open(String key, boolean list) {
    JSObject opened = list ? list() : object();
    put(last, key, opened);
    put(open, "", opened);
    last = opened;
  }

  @Override
  public void close() {
    last = left(open);
  }

  @Override
  public void number(String key, double value) {
    put(last, key, value);
  }

  @Override
  public void flag(String key, boolean value) {
    put(last, key, value);
  }

  @Override
  public void text(String key, String value) {
    put(last, key, value);
  }

  @Override
  public void nothing(String key) {
    put(last, key, (JSObject) null);
  }

  @JSBody(script = "return [];")
  private static native JSObject list();

  @JSBody(script = "return {};")
  private static native JSObject object();

  /** Takes the last off a list and gives the one before it. */
  @JSBody(params = "list", script = "list.pop(); return list[list.length - 1];")
  private static native JSObject left(JSObject list);

  @JSBody(
      params = {"list", "i"},
      script = "return list[i];")
  private static native JSObject item(JSObject list, int i);

  @JSBody(
      params = {"to", "k", "v"},
      script = "if (k) { to[k] = v; } else { to.push(v); }")
  private static native void put(JSObject to, String k, JSObject v);

  @JSBody(
      params = {"to", "k", "v"},
      script = "if (k) { to[k] = v; } else { to.push(v); }")
  private static native void put(JSObject to, String k, double v);

  @JSBody(
      params = {"to", "k", "v"},
      script = "if (k) { to[k] = v; } else { to.push(v); }")
  private static native void put(JSObject to, String k, boolean v);

  @JSBody(
      params = {"to", "k", "v"},
      script = "if (k) { to[k] = v; } else { to.push(v); }")
  private static native void put(JSObject to, String k, String v);
}
