package benchlore.generator.browser;

import benchlore.generator.json.Sink;
import java.util.ArrayList;
import java.util.List;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;

/** Builds a plain object of a page's script. */
final class PageSink implements Sink {
  private final List<JSObject> open = new ArrayList<>();
  private JSObject last = list();

  PageSink() {
    open.add(last);
  }

  /** What was written. */
  JSObject whole() {
    return item(last, 0);
  }

  @Override
  public void open(String key, boolean list) {
    JSObject opened = list ? list() : object();
    put(last, key, opened);
    open.add(opened);
    last = opened;
  }

  @Override
  public void close() {
    open.remove(open.size() - 1);
    last = open.get(open.size() - 1);
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
