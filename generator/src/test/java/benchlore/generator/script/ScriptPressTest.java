package benchlore.generator.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/**
 * The steps on small scripts in the compiler's shape. That the whole script still does the same is
 * shown in a browser, by thousands of requests.
 */
class ScriptPressTest {
  private static final String SCRIPT =
      """
      (function() {
        let x_Holder = $rt_classWithoutFields(),
        x_Ridge = $rt_classWithoutFields(0),
        x_Asked = $rt_classWithoutFields(0);
        function x_Pair() {
          let a = this; jl_Record.call(a);
          a.$one = null;
        }
        function x_Counter() {
          let a = this; jl_Object.call(a);
          a.$count = 0;
        }
        let x_Holder_LIST = null,
        x_Holder_LAST = null,
        x_Holder_$callClinit = () => {
          x_Holder_$callClinit = $rt_eraseClinit(x_Holder);
          x_Holder_LIST = new x_Pair();
        },
        x_Holder_last = () => {
          if (x_Holder_LAST === null) { x_Holder_LAST = new x_Counter(); }
          return $rt_isInstance(x_Holder_LAST, x_Asked) ? $rt_s(1) : $rt_s(0);
        },
        x_Holder_name = () => $rt_s(0);
        $rt_metadata([x_Asked, 0, jl_Object, [], 1537, 0, 0, 0,
          x_Ridge, 0, jl_Object, [], 1537, 0, 0, 0,
          x_Holder, 0, jl_Object, [], 17, 0, 0, 0,
          x_Pair, 0, jl_Record, [x_Ridge], 17, 0, 0, ["$one", $rt_wrapFunction0(x_Pair_one)],
          x_Counter, 0, jl_Object, [x_Asked, x_Ridge], 1, 0, 0,
            [["$count", "$size"], $rt_wrapFunction0(x_Counter_count)],
          jl_Object, 0, 0, [], 1, 0, 0, 0,
          jl_Record, 0, jl_Object, [], 1, 0, 0, 0]);
        $rt_enumConstantsMetadata([]);
        $rt_stringPool(["often", "once"]);
      })();
      """;

  @Test
  void whatIsNeverUsedIsLeftOut() {
    String text = tables(SCRIPT);
    assertFalse(text.contains("x_Ridge"), text);
    assertFalse(text.contains("x_Holder="), text);
    assertTrue(text.contains("x_Holder_$callClinit=$press_done"), text);
  }

  @Test
  void aRecordNeedsNoFirstValuesAndOtherObjectsKeepThem() {
    String text = tables(SCRIPT);
    assertFalse(text.contains("a.$one=null"), text);
    assertTrue(text.contains("let [x_Pair]=$press_classes(jl_Record,1)"), text);
    assertTrue(text.contains("a.$count=0"), text);
  }

  @Test
  void whatAnObjectIsTestedForStaysInTheTable() {
    String text = tables(SCRIPT);
    assertTrue(text.contains("x_Counter,0,jl_Object,[x_Asked],1,0,0,0"), text);
  }

  @Test
  void methodsAreCalledByNamesThatCanBeShortened() {
    String text = tables(SCRIPT);
    assertTrue(text.contains("$press_each([x_Pair,x_Pair_one],(p,f)=>{p.$one="), text);
    assertTrue(text.contains("$press_each([x_Counter,x_Counter_count],(p,f)=>{p.$count="), text);
    assertTrue(text.contains("$press_each([x_Counter,x_Counter_count],(p,f)=>{p.$size="), text);
  }

  private static String tables(String script) {
    ScriptTree tree = ScriptTree.parse(script);
    ClassTable.rewrite(tree);
    return tree.text();
  }

  /** The compiler writes no such table where no constant is found by its name. */
  @Test
  void aScriptMayHaveNoTableOfConstantsButNotTwo() {
    String constants = "$rt_enumConstantsMetadata([]);";
    assertTrue(tables(SCRIPT).contains(constants));
    String without = tables(SCRIPT.replace(constants, ""));
    assertEquals(tables(SCRIPT).replace(constants, ""), without);
    String twice = SCRIPT.replace(constants, constants + constants);
    assertThrows(IllegalArgumentException.class, () -> tables(twice));
  }

  @Test
  void aTextUsedOnceStandsAtItsPlaceAndTheOthersInThePool() {
    ScriptTree tree = ScriptTree.parse(SCRIPT);
    TextPool.rewrite(tree);
    String text = tree.text();
    assertTrue(text.contains("$rt_str(\"once\"):$rt_s(0)"), text);
    assertTrue(text.contains("$rt_stringPool([\"often\"])"), text);
  }

  @Test
  void aStaticFieldComparedWithNullKeepsIt() {
    ScriptTree tree = ScriptTree.parse(SCRIPT);
    StaticFields.rewrite(tree);
    String text = tree.text();
    assertTrue(text.contains("x_Holder_LIST,"), text);
    assertTrue(text.contains("x_Holder_LAST=null"), text);
  }

  @Test
  void aScriptOfAnotherShapeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> tables("let a = 1;"));
    String shifted = SCRIPT.replace("x_Ridge, 0, jl_Object, []", "x_Ridge, jl_Object, []");
    assertThrows(IllegalArgumentException.class, () -> tables(shifted));
    ScriptTree poolless = ScriptTree.parse("let a = 1;");
    assertThrows(IllegalArgumentException.class, () -> TextPool.rewrite(poolless));
    IllegalArgumentException broken =
        assertThrows(IllegalArgumentException.class, () -> ScriptTree.parse("let = ;"));
    assertEquals("not a script:", broken.getMessage().substring(0, 13));
  }
}
