package benchlore.schedules.quantity.guard;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.Tree.Kind;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.lang.model.element.Element;

/**
 * Finds groupings of doubles that the compiler to JavaScript loses: {@code a + (b + c)} becomes
 * {@code a + b + c}.
 *
 * <p>It puts a local variable, or a method of the engine, into the place where it is used, so those
 * count as what they stand for: a local whose value is read once, and a method that returns such an
 * expression.
 */
final class GroupingScan extends TreePathScanner<Void, Void> {
  private final Typed typed;
  private final Grouped grouped;
  private final List<Finding> findings;
  private final Map<Element, TreeMap<Long, Event>> locals = new HashMap<>();

  GroupingScan(Typed typed, List<Finding> findings) {
    this.typed = typed;
    this.grouped = new Grouped(typed);
    this.findings = findings;
  }

  /**
   * What happens to a local variable at one place of the source.
   *
   * @param written the expression it is given, or null for a read
   * @param right the rule its being a sum or a product would break here, or null
   * @param path where
   */
  private record Event(TreePath written, Rule right, TreePath path) {}

  @Override
  public Void visitMethod(MethodTree method, Void none) {
    super.visitMethod(method, null);
    for (TreeMap<Long, Event> events : locals.values()) {
      check(new ArrayList<>(events.values()));
    }
    locals.clear();
    return null;
  }

  private void check(List<Event> events) {
    for (int i = 0; i < events.size(); i++) {
      TreePath written = events.get(i).written();
      boolean readOnce =
          i + 1 < events.size()
              && events.get(i + 1).written() == null
              && (i + 2 == events.size() || events.get(i + 2).written() != null);
      if (written != null && readOnce && events.get(i + 1).right() != null) {
        Event read = events.get(i + 1);
        if (grouped.is(read.right(), written)) {
          findings.add(typed.finding(read.right(), read.path().getParentPath()));
        }
      }
    }
  }

  @Override
  public Void visitBinary(BinaryTree binary, Void none) {
    Rule rule = rule(binary.getKind());
    if (rule != null && typed.floating(getCurrentPath())) {
      right(rule, binary.getRightOperand());
    }
    return super.visitBinary(binary, null);
  }

  @Override
  public Void visitCompoundAssignment(CompoundAssignmentTree assignment, Void none) {
    Rule rule = rule(assignment.getKind());
    if (rule != null && typed.floating(getCurrentPath())) {
      right(rule, assignment.getExpression());
    }
    return super.visitCompoundAssignment(assignment, null);
  }

  private static Rule rule(Kind kind) {
    return switch (kind) {
      case PLUS, PLUS_ASSIGNMENT -> Rule.SUM_RIGHT_OF_PLUS;
      case MULTIPLY, MULTIPLY_ASSIGNMENT -> Rule.PRODUCT_RIGHT_OF_TIMES;
      default -> null;
    };
  }

  private void right(Rule rule, ExpressionTree operand) {
    if (grouped.is(rule, new TreePath(getCurrentPath(), operand))) {
      findings.add(typed.finding(rule, getCurrentPath()));
    }
  }

  @Override
  public Void visitVariable(VariableTree variable, Void none) {
    if (variable.getInitializer() != null) {
      TreePath value = new TreePath(getCurrentPath(), variable.getInitializer());
      write(typed.element(getCurrentPath()), value);
    }
    return super.visitVariable(variable, null);
  }

  @Override
  public Void visitAssignment(AssignmentTree assignment, Void none) {
    TreePath target = new TreePath(getCurrentPath(), assignment.getVariable());
    write(typed.element(target), new TreePath(getCurrentPath(), assignment.getExpression()));
    return scan(assignment.getExpression(), null);
  }

  private void write(Element local, TreePath value) {
    if (Grouped.local(local)) {
      // Written once the whole expression is worked out, so after the reads in it.
      event(local, typed.end(value, value.getLeaf()) + 1, new Event(value, null, value));
    }
  }

  @Override
  public Void visitIdentifier(IdentifierTree identifier, Void none) {
    Element local = typed.element(getCurrentPath());
    if (Grouped.local(local)) {
      event(local, typed.start(getCurrentPath()), new Event(null, place(), getCurrentPath()));
    }
    return super.visitIdentifier(identifier, null);
  }

  private void event(Element local, long position, Event event) {
    locals.computeIfAbsent(local, key -> new TreeMap<>()).put(position, event);
  }

  /** The rule that a sum or product in the place of this identifier would break, if any. */
  private Rule place() {
    TreePath operand = getCurrentPath();
    while (Grouped.transparent(operand.getParentPath().getLeaf())) {
      operand = operand.getParentPath();
    }
    TreePath parent = operand.getParentPath();
    Tree leaf = operand.getLeaf();
    boolean right =
        (parent.getLeaf() instanceof BinaryTree binary && binary.getRightOperand() == leaf)
            || (parent.getLeaf() instanceof CompoundAssignmentTree assignment
                && assignment.getExpression() == leaf);
    return right && typed.floating(parent) ? rule(parent.getLeaf().getKind()) : null;
  }
}
