package benchlore.generator.script;

import com.google.javascript.rhino.IR;
import com.google.javascript.rhino.Node;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Puts each text that is used in one place where it is used, and the others in a pool, the most
 * used first: a place in the pool is as long as a short word.
 */
final class TextPool {
  private static final String USE = "$rt_s";
  private static final String POOL = "$rt_stringPool";
  private static final String AT_ITS_PLACE = "$rt_str";

  private TextPool() {}

  /** Rewrites the pool of a script and every use of it, in place. */
  static void rewrite(ScriptTree script) {
    List<Node> pools = script.calls(POOL);
    if (pools.size() != 1) {
      throw new IllegalArgumentException("the script has no pool of texts as known");
    }
    Node pool = pools.get(0).getSecondChild();
    List<Node> texts = ScriptTree.children(pool);
    Map<Integer, List<Node>> uses = new TreeMap<>();
    for (Node use : script.calls(USE)) {
      int place = (int) use.getSecondChild().getDouble();
      uses.computeIfAbsent(place, key -> new ArrayList<>()).add(use);
    }
    texts.forEach(Node::detach);
    List<Integer> shared = new ArrayList<>();
    uses.forEach(
        (place, at) -> {
          if (at.size() == 1) {
            at.get(0).replaceWith(IR.call(IR.name(AT_ITS_PLACE), texts.get(place)));
          } else {
            shared.add(place);
          }
        });
    shared.sort(Comparator.comparing(place -> -uses.get(place).size()));
    for (int i = 0; i < shared.size(); i++) {
      pool.addChildToBack(texts.get(shared.get(i)));
      for (Node use : uses.get(shared.get(i))) {
        use.getSecondChild().setDouble(i);
      }
    }
  }
}
