package benchlore.generator.script;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.ClassReader;
import org.teavm.model.ClassReaderSource;
import org.teavm.model.ElementModifier;
import org.teavm.model.FieldReader;
import org.teavm.model.FieldReference;
import org.teavm.model.Instruction;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.Program;
import org.teavm.model.ValueType;
import org.teavm.model.Variable;
import org.teavm.model.instructions.GetElementInstruction;
import org.teavm.model.instructions.GetFieldInstruction;
import org.teavm.model.instructions.IntegerConstantInstruction;
import org.teavm.model.instructions.PutElementInstruction;
import org.teavm.model.instructions.SwitchInstruction;
import org.teavm.model.instructions.SwitchTableEntry;
import org.teavm.model.instructions.UnwrapArrayInstruction;

/**
 * Lets a {@code switch} over an enum ask for the constant's place in it.
 *
 * <p>The Java compiler goes by way of a table in a class beside, so that classes compiled apart fit
 * each other. Here everything is compiled at once, and the tables are weight.
 */
final class EnumSwitches implements ClassHolderTransformer {
  private static final String TABLE = "$SwitchMap$";

  @Override
  public void transformClass(ClassHolder cls, ClassHolderTransformerContext context) {
    rewrite(cls, context.getHierarchy().getClassSource());
  }

  static void rewrite(ClassHolder cls, ClassReaderSource classes) {
    for (MethodHolder method : cls.getMethods()) {
      if (method.getProgram() != null) {
        for (BasicBlock block : method.getProgram().getBasicBlocks()) {
          new Step(classes).rewrite(block);
        }
      }
    }
  }

  /** One block of a method: the Java compiler reads the table and switches on it in one breath. */
  private static final class Step {
    private final ClassReaderSource classes;
    private final Map<Variable, FieldReference> tables = new HashMap<>();
    private final Map<Variable, GetElementInstruction> places = new HashMap<>();
    private final List<Instruction> reads = new ArrayList<>();

    Step(ClassReaderSource classes) {
      this.classes = classes;
    }

    void rewrite(BasicBlock block) {
      for (Instruction instruction : block) {
        if (instruction instanceof GetFieldInstruction read
            && read.getField().getFieldName().startsWith(TABLE)) {
          tables.put(read.getReceiver(), read.getField());
          reads.add(read);
        } else if (instruction instanceof UnwrapArrayInstruction unwrapped
            && tables.containsKey(unwrapped.getArray())) {
          tables.put(unwrapped.getReceiver(), tables.get(unwrapped.getArray()));
          reads.add(unwrapped);
        } else if (instruction instanceof GetElementInstruction element
            && tables.containsKey(element.getArray())) {
          places.put(element.getReceiver(), element);
          reads.add(element);
        }
      }
      if (block.getLastInstruction() instanceof SwitchInstruction choice
          && places.containsKey(choice.getCondition())) {
        GetElementInstruction place = places.get(choice.getCondition());
        Map<Integer, Integer> ordinals = ordinals(tables.get(place.getArray()));
        choice.setCondition(place.getIndex());
        for (SwitchTableEntry entry : choice.getEntries()) {
          entry.setCondition(ordinals.get(entry.getCondition()));
        }
        reads.forEach(Instruction::delete);
      }
    }

    /** The place in its enum of each constant, by the number the table gives it. */
    private Map<Integer, Integer> ordinals(FieldReference table) {
      Program filling =
          ((MethodHolder)
                  classes
                      .get(table.getClassName())
                      .getMethod(new MethodDescriptor("<clinit>", ValueType.VOID)))
              .getProgram();
      Map<Integer, Integer> ordinals = new HashMap<>();
      for (BasicBlock block : filling.getBasicBlocks()) {
        fill(block, table, ordinals);
      }
      return ordinals;
    }

    private void fill(BasicBlock block, FieldReference table, Map<Integer, Integer> ordinals) {
      boolean inTable = false;
      FieldReference constant = null;
      int number = 0;
      for (Instruction instruction : block) {
        if (instruction instanceof GetFieldInstruction read) {
          if (read.getField().getFieldName().startsWith(TABLE)) {
            inTable = read.getField().equals(table);
          } else {
            constant = read.getField();
          }
        } else if (instruction instanceof IntegerConstantInstruction integer) {
          number = integer.getConstant();
        } else if (instruction instanceof PutElementInstruction && inTable && constant != null) {
          ordinals.put(number, ordinal(constant));
        }
      }
    }

    private int ordinal(FieldReference constant) {
      ClassReader holder = classes.get(constant.getClassName());
      int place = 0;
      for (FieldReader field : holder.getFields()) {
        if (field.readModifiers().contains(ElementModifier.ENUM)) {
          if (field.getName().equals(constant.getFieldName())) {
            return place;
          }
          place++;
        }
      }
      throw new IllegalArgumentException("not a constant of an enum: " + constant);
    }
  }
}
