package benchlore.schedules.quantity.guard;

import com.sun.source.tree.ConditionalExpressionTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ParenthesizedTree;
import com.sun.source.tree.ReturnTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.Tree.Kind;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;

/** Tells whether an expression is, once put in place, a sum or a product. */
final class Grouped {
  private static final Set<Kind> SUMS = Set.of(Kind.PLUS, Kind.MINUS);
  private static final Set<Kind> PRODUCTS = Set.of(Kind.MULTIPLY, Kind.DIVIDE, Kind.REMAINDER);
  private static final int DEEPEST_CALL = 5;
  private final Typed typed;

  Grouped(Typed typed) {
    this.typed = typed;
  }

  /** True if the expression is what the rule forbids on the right. */
  boolean is(Rule rule, TreePath expression) {
    return is(rule, expression, 0);
  }

  private boolean is(Rule rule, TreePath expression, int depth) {
    Tree tree = expression.getLeaf();
    if (tree instanceof ParenthesizedTree inner) {
      return is(rule, new TreePath(expression, inner.getExpression()), depth);
    }
    if (tree instanceof TypeCastTree cast) {
      return typed.floating(expression)
          && is(rule, new TreePath(expression, cast.getExpression()), depth);
    }
    if (tree instanceof ConditionalExpressionTree choice) {
      return is(rule, new TreePath(expression, choice.getTrueExpression()), depth)
          || is(rule, new TreePath(expression, choice.getFalseExpression()), depth);
    }
    if (tree instanceof MethodInvocationTree) {
      return depth < DEEPEST_CALL && returns(rule, expression, depth + 1);
    }
    Set<Kind> kinds = rule == Rule.SUM_RIGHT_OF_PLUS ? SUMS : PRODUCTS;
    return kinds.contains(tree.getKind()) && typed.floating(expression);
  }

  private boolean returns(Rule rule, TreePath call, int depth) {
    Element method = typed.element(call);
    TreePath body = method == null ? null : typed.trees().getPath(method);
    if (body == null || !(body.getLeaf() instanceof MethodTree)) {
      return false;
    }
    boolean[] found = {false};
    new TreePathScanner<Void, Void>() {
      @Override
      public Void visitReturn(ReturnTree statement, Void none) {
        if (statement.getExpression() != null) {
          TreePath value = new TreePath(getCurrentPath(), statement.getExpression());
          found[0] = found[0] || is(rule, value, depth);
        }
        return null;
      }
    }.scan(body, null);
    return found[0];
  }

  /** A bracket, or a cast that changes nothing in JavaScript. */
  static boolean transparent(Tree tree) {
    return tree instanceof ParenthesizedTree || tree instanceof TypeCastTree;
  }

  static boolean local(Element element) {
    return element != null && element.getKind() == ElementKind.LOCAL_VARIABLE;
  }
}
