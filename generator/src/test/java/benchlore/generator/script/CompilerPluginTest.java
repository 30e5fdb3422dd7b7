package benchlore.generator.script;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import benchlore.schedules.trade.ApplicationMethod;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.ReferenceCache;
import org.teavm.model.instructions.ConstructInstruction;
import org.teavm.model.instructions.GetFieldInstruction;
import org.teavm.model.instructions.SwitchInstruction;
import org.teavm.model.instructions.SwitchTableEntry;
import org.teavm.parsing.ClasspathClassHolderSource;

/** What the compiler to JavaScript is told to leave out, on classes the Java compiler wrote. */
class CompilerPluginTest {
  private static final ClasspathClassHolderSource CLASSES =
      new ClasspathClassHolderSource(new ReferenceCache());

  /** Asks for what it is given, and for one thing more. */
  record Checked(String one, String two, double three) {
    Checked {
      if (one == null || two == null) {
        throw new NullPointerException("one and two");
      }
      if (!(three >= 0)) {
        throw new IllegalArgumentException("three must be 0 or more");
      }
    }
  }

  /** Switches over an enum that was compiled elsewhere, out of its order. */
  static final class Chooser {
    private Chooser() {}

    static int choose(ApplicationMethod method) {
      return switch (method) {
        case SPRAY -> 6;
        case BRUSH -> 1;
        case PAD, ROLLER -> 3;
        case WIPE, FLOOD -> 2;
      };
    }
  }

  @Test
  void aCheckOfNullIsLeftOutAndNoOtherCheck() {
    ClassHolder cls = CLASSES.get(Checked.class.getName());
    assertEquals(
        List.of("java.lang.NullPointerException", "java.lang.IllegalArgumentException"), made(cls));
    NullChecks.rewrite(cls);
    assertEquals(List.of("java.lang.IllegalArgumentException"), made(cls));
  }

  private static List<String> made(ClassHolder cls) {
    List<String> made = new ArrayList<>();
    for (Instruction instruction : instructions(cls, "<init>")) {
      if (instruction instanceof ConstructInstruction construct) {
        made.add(construct.getType());
      }
    }
    return made;
  }

  @Test
  void aSwitchAsksForTheConstantsPlace() {
    ClassHolder cls = CLASSES.get(Chooser.class.getName());
    assertTrue(readsATable(cls));
    EnumSwitches.rewrite(cls, CLASSES);
    assertFalse(readsATable(cls));
    List<Integer> asked = new ArrayList<>();
    for (Instruction instruction : instructions(cls, "choose")) {
      if (instruction instanceof SwitchInstruction choice) {
        for (SwitchTableEntry entry : choice.getEntries()) {
          asked.add(entry.getCondition());
        }
      }
    }
    List<Integer> places = new ArrayList<>();
    for (String name : List.of("SPRAY", "BRUSH", "PAD", "ROLLER", "WIPE", "FLOOD")) {
      places.add(List.of(ApplicationMethod.values()).indexOf(ApplicationMethod.valueOf(name)));
    }
    assertEquals(places, asked);
  }

  private static boolean readsATable(ClassHolder cls) {
    return instructions(cls, "choose").stream()
        .anyMatch(
            instruction ->
                instruction instanceof GetFieldInstruction read
                    && read.getField().getFieldName().startsWith("$SwitchMap$"));
  }

  private static List<Instruction> instructions(ClassHolder cls, String method) {
    List<Instruction> all = new ArrayList<>();
    for (MethodHolder holder : cls.getMethods()) {
      if (holder.getName().equals(method)) {
        for (BasicBlock block : holder.getProgram().getBasicBlocks()) {
          block.forEach(all::add);
        }
      }
    }
    return all;
  }
}
