package benchlore.generator.browser;

import benchlore.schedules.exchange.Node;
import java.util.ArrayList;
import java.util.List;
import org.teavm.jso.JSBody;
import org.teavm.jso.JSObject;

/** A value of a page's script. */
final class PageNode implements Node {
  private static final Kind[] KINDS = Kind.values();
  private final JSObject value;

  PageNode(JSObject value) {
    this.value = value;
  }

  @Override
  public Kind kind() {
    return KINDS[kind(value)];
  }

  @Override
  public boolean flag() {
    return isTrue(value);
  }

  @Override
  public double number() {
    return number(value);
  }

  @Override
  public String text() {
    return text(value);
  }

  @Override
  public int size() {
    return size(value);
  }

  @Override
  public Node item(int index) {
    return new PageNode(item(value, index));
  }

  @Override
  public Node field(String key) {
    return new PageNode(field(value, key));
  }

  @Override
  public List<String> keys() {
    JSObject keys = keys(value);
    List<String> list = new ArrayList<>();
    for (int i = 0; i < size(keys); i++) {
      list.add(text(item(keys, i)));
    }
    return list;
  }

  @JSBody(params = "v", script = "return Object.keys(v);")
  private static native JSObject keys(JSObject v);

  /** The place of the value's kind in {@link Node.Kind}. */
  @JSBody(
      params = "v",
      script =
          "return typeof v === 'boolean' ? 1 : typeof v === 'number' ? (isFinite(v) ? 2 : 0)"
              + " : typeof v === 'string' ? 3 : Array.isArray(v) ? 4"
              + " : typeof v === 'object' && v ? 5 : 0;")
  private static native int kind(JSObject v);

  @JSBody(params = "v", script = "return v;")
  private static native boolean isTrue(JSObject v);

  @JSBody(params = "v", script = "return v;")
  private static native double number(JSObject v);

  @JSBody(params = "v", script = "return v;")
  private static native String text(JSObject v);

  @JSBody(params = "v", script = "return v.length;")
  private static native int size(JSObject v);

  @JSBody(
      params = {"v", "i"},
      script = "return v[i];")
  private static native JSObject item(JSObject v, int i);

  // An object's own fields alone, so that no name of the language itself is taken for one.
  @JSBody(
      params = {"v", "k"},
      script = "return Object.prototype.hasOwnProperty.call(v, k) ? v[k] : null;")
  private static native JSObject field(JSObject v, String k);
}
