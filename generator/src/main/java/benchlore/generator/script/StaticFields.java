package benchlore.generator.script;

import com.google.javascript.rhino.Node;
import com.google.javascript.rhino.Token;
import java.util.List;

/**
 * Drops the first value, null, of the static fields that nobody compares with null.
 *
 * <p>Their class's initializer sets them before anyone reads them.
 */
final class StaticFields {
  private StaticFields() {}

  /** Rewrites the declarations of a script, in place. */
  static void rewrite(ScriptTree script) {
    for (List<Node> places : script.names().values()) {
      Node declared = places.get(0);
      if (isNullField(declared) && places.stream().noneMatch(StaticFields::isCompared)) {
        declared.removeChildren();
      }
    }
  }

  private static boolean isNullField(Node name) {
    return name.getParent().isLet() && name.hasChildren() && name.getFirstChild().isNull();
  }

  private static boolean isCompared(Node place) {
    Token asked = place.getParent().getToken();
    return asked == Token.SHEQ || asked == Token.SHNE || asked == Token.EQ || asked == Token.NE;
  }
}
