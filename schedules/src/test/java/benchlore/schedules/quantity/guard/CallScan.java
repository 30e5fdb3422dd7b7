package benchlore.schedules.quantity.guard;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.ImportTree;
import com.sun.source.tree.MemberReferenceTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.NewClassTree;
import com.sun.source.tree.Tree.Kind;
import com.sun.source.tree.TypeCastTree;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import java.util.List;
import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ExecutableElement;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;

/** Finds calls, casts and number text that differ in a browser or weigh too much there. */
final class CallScan extends TreePathScanner<Void, Void> {
  private static final Set<String> EXACT =
      Set.of("sqrt", "abs", "min", "max", "floor", "ceil", "floorMod", "floorDiv", "toIntExact");
  private static final Set<String> WHOLE = Set.of("int", "long", "short", "byte", "char");
  private static final Set<String> WRITES_NUMBERS = Set.of("valueOf", "append", "toString");
  private static final Set<String> FORMATS =
      Set.of("format", "formatted", "matches", "replaceAll", "replaceFirst", "split");
  private static final List<String> OUTSIDE =
      List.of(
          "java.lang.System",
          "java.lang.Thread",
          "java.lang.Runtime",
          "java.lang.Process",
          "java.lang.Class",
          "java.lang.reflect",
          "java.lang.invoke",
          "java.io",
          "java.net",
          "java.nio",
          "java.util.Random",
          "java.util.UUID",
          "java.util.concurrent",
          "java.util.logging");
  private final Typed typed;
  private final List<Finding> findings;

  CallScan(Typed typed, List<Finding> findings) {
    this.typed = typed;
    this.findings = findings;
  }

  @Override
  public Void visitImport(ImportTree imported, Void none) {
    String name = imported.getQualifiedIdentifier().toString();
    if (name.startsWith("java.util.stream.Double")) {
      report(Rule.STREAM);
    } else if (name.startsWith("java.util.regex.") || name.startsWith("java.text.")) {
      report(Rule.FORMATTING);
    }
    return super.visitImport(imported, null);
  }

  @Override
  public Void visitMethodInvocation(MethodInvocationTree call, Void none) {
    called(typed.element(getCurrentPath()), call.getArguments());
    return super.visitMethodInvocation(call, null);
  }

  @Override
  public Void visitMemberReference(MemberReferenceTree reference, Void none) {
    called(typed.element(getCurrentPath()), List.of());
    return super.visitMemberReference(reference, null);
  }

  @Override
  public Void visitNewClass(NewClassTree made, Void none) {
    called(typed.element(getCurrentPath()), made.getArguments());
    return super.visitNewClass(made, null);
  }

  private void called(Element element, List<? extends ExpressionTree> arguments) {
    if (!(element instanceof ExecutableElement method)) {
      return;
    }
    String owner = method.getEnclosingElement().toString();
    String name = method.getSimpleName().toString();
    if (owner.equals("java.lang.Math") || owner.equals("java.lang.StrictMath")) {
      reportIf(!EXACT.contains(name), Rule.PLATFORM_MATH);
    }
    reportIf(narrows(owner, name), Rule.UNCHECKED_CAST);
    reportIf(formats(owner, name, arguments), Rule.FORMATTING);
    reportIf(streams(owner, method), Rule.STREAM);
    reportIf(owner.startsWith("java.time."), Rule.JDK_TIME);
    reportIf(outside(owner, name), Rule.OUTSIDE_WORLD);
    reportIf(writesNumber(name, method, arguments), Rule.NUMBER_TEXT);
  }

  private static boolean narrows(String owner, String name) {
    boolean box = owner.equals("java.lang.Double") || owner.equals("java.lang.Float");
    return box && (name.equals("intValue") || name.equals("longValue"));
  }

  private static boolean formats(
      String owner, String name, List<? extends ExpressionTree> arguments) {
    if (!owner.equals("java.lang.String")) {
      return owner.startsWith("java.util.regex.") || owner.startsWith("java.text.");
    }
    boolean changesCase = name.equals("toLowerCase") || name.equals("toUpperCase");
    boolean root = arguments.size() == 1 && arguments.get(0).toString().endsWith("Locale.ROOT");
    return FORMATS.contains(name) || (changesCase && !root);
  }

  private static boolean streams(String owner, ExecutableElement method) {
    return owner.startsWith("java.util.stream.Double")
        || method.getReturnType().toString().startsWith("java.util.stream.Double");
  }

  private static boolean outside(String owner, String name) {
    if (owner.equals("java.lang.Object")) {
      return name.equals("getClass") || name.startsWith("wait") || name.startsWith("notify");
    }
    for (String start : OUTSIDE) {
      if (owner.equals(start) || owner.startsWith(start + ".")) {
        return true;
      }
    }
    return owner.equals("java.lang.Math") && name.equals("random");
  }

  private boolean writesNumber(
      String name, ExecutableElement method, List<? extends ExpressionTree> arguments) {
    String owner = method.getEnclosingElement().toString();
    boolean writer =
        Set.of("java.lang.String", "java.lang.StringBuilder").contains(owner)
            || owner.equals("java.lang.Double");
    if (!writer || !WRITES_NUMBERS.contains(name)) {
      return false;
    }
    boolean text = !method.getReturnType().toString().equals("java.lang.Double");
    if (owner.equals("java.lang.Double")) {
      return text;
    }
    return !arguments.isEmpty()
        && typed.floating(new TreePath(getCurrentPath(), arguments.get(arguments.size() - 1)));
  }

  @Override
  public Void visitBinary(BinaryTree binary, Void none) {
    if (binary.getKind() == Kind.PLUS && typed.text(getCurrentPath())) {
      boolean number =
          typed.floating(new TreePath(getCurrentPath(), binary.getLeftOperand()))
              || typed.floating(new TreePath(getCurrentPath(), binary.getRightOperand()));
      reportIf(number, Rule.NUMBER_TEXT);
    }
    return super.visitBinary(binary, null);
  }

  @Override
  public Void visitCompoundAssignment(CompoundAssignmentTree assignment, Void none) {
    if (assignment.getKind() == Kind.PLUS_ASSIGNMENT && typed.text(getCurrentPath())) {
      reportIf(
          typed.floating(new TreePath(getCurrentPath(), assignment.getExpression())),
          Rule.NUMBER_TEXT);
    } else {
      boolean number = typed.floating(new TreePath(getCurrentPath(), assignment.getExpression()));
      reportIf(number && !typed.floating(getCurrentPath()), Rule.UNCHECKED_CAST);
    }
    return super.visitCompoundAssignment(assignment, null);
  }

  @Override
  public Void visitTypeCast(TypeCastTree cast, Void none) {
    TypeMirror type = typed.trees().getTypeMirror(new TreePath(getCurrentPath(), cast.getType()));
    TypeKind kind = type == null ? TypeKind.NONE : type.getKind();
    boolean whole = WHOLE.contains(kind.name().toLowerCase(java.util.Locale.ROOT));
    boolean number = typed.floating(new TreePath(getCurrentPath(), cast.getExpression()));
    reportIf(whole && number, Rule.UNCHECKED_CAST);
    return super.visitTypeCast(cast, null);
  }

  private void reportIf(boolean broken, Rule rule) {
    if (broken) {
      report(rule);
    }
  }

  private void report(Rule rule) {
    findings.add(typed.finding(rule, getCurrentPath()));
  }
}
