package benchlore.generator.script;

import java.util.ArrayList;
import java.util.List;
import org.teavm.model.BasicBlock;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.Instruction;
import org.teavm.model.MethodHolder;
import org.teavm.model.Program;
import org.teavm.model.instructions.BranchingCondition;
import org.teavm.model.instructions.BranchingInstruction;
import org.teavm.model.instructions.ConstructInstruction;
import org.teavm.model.instructions.JumpInstruction;
import org.teavm.model.instructions.RaiseInstruction;
import org.teavm.model.optimization.UnreachableBasicBlockEliminator;

/**
 * Leaves out the engine's checks that a caller gave no null.
 *
 * <p>They are there for a programmer who calls the engine from Java. A page calls it through the
 * reader of requests alone, which makes no null and refuses what is missing by name; a test sends
 * broken requests through both.
 */
final class NullChecks implements ClassHolderTransformer {
  private static final String OURS = "benchlore.";

  @Override
  public void transformClass(ClassHolder cls, ClassHolderTransformerContext context) {
    if (cls.getName().startsWith(OURS)) {
      rewrite(cls);
    }
  }

  static void rewrite(ClassHolder cls) {
    for (MethodHolder method : cls.getMethods()) {
      if (method.getProgram() != null && removeChecks(method.getProgram())) {
        new UnreachableBasicBlockEliminator().optimize(method.getProgram());
      }
    }
  }

  private static boolean removeChecks(Program program) {
    List<BranchingInstruction> checks = new ArrayList<>();
    for (BasicBlock block : program.getBasicBlocks()) {
      if (block.getLastInstruction() instanceof BranchingInstruction branch
          && complains(ifNull(branch))) {
        checks.add(branch);
      }
    }
    for (BranchingInstruction check : checks) {
      BasicBlock complaint = ifNull(check);
      BasicBlock other =
          check.getConsequent() == complaint ? check.getAlternative() : check.getConsequent();
      complaint.removeIncomingsFrom(check.getBasicBlock());
      JumpInstruction jump = new JumpInstruction();
      jump.setTarget(other);
      jump.setLocation(check.getLocation());
      check.replace(jump);
    }
    return !checks.isEmpty();
  }

  /** Where a branch goes if its value is null; null for a branch that asks something else. */
  private static BasicBlock ifNull(BranchingInstruction branch) {
    if (branch.getCondition() == BranchingCondition.NULL) {
      return branch.getConsequent();
    }
    return branch.getCondition() == BranchingCondition.NOT_NULL ? branch.getAlternative() : null;
  }

  /** True for a block that does nothing but make and throw this exception. */
  private static boolean complains(BasicBlock block) {
    if (block == null || !(block.getLastInstruction() instanceof RaiseInstruction)) {
      return false;
    }
    for (Instruction instruction : block) {
      if (instruction instanceof ConstructInstruction made) {
        return made.getType().equals(NullPointerException.class.getName());
      }
    }
    return false;
  }
}
