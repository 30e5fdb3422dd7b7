package benchlore.schedules.quantity.guard;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreePath;
import com.sun.source.util.Trees;
import java.nio.file.Path;
import javax.lang.model.element.Element;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.Elements;
import javax.lang.model.util.Types;

/** What the compiler knows of a tree: its type, the element it names, where it stands. */
record Typed(Trees trees, Types types, Elements elements) {

  /** True for float, double and their boxes. */
  boolean floating(TreePath path) {
    TypeMirror type = trees.getTypeMirror(path);
    if (type == null) {
      return false;
    }
    if (type.getKind() == TypeKind.DECLARED) {
      String name = type.toString();
      return name.equals("java.lang.Double") || name.equals("java.lang.Float");
    }
    return type.getKind() == TypeKind.DOUBLE || type.getKind() == TypeKind.FLOAT;
  }

  /** True for a String. */
  boolean text(TreePath path) {
    TypeMirror type = trees.getTypeMirror(path);
    return type != null && type.toString().equals("java.lang.String");
  }

  Element element(TreePath path) {
    return trees.getElement(path);
  }

  Finding finding(Rule rule, TreePath path) {
    CompilationUnitTree unit = path.getCompilationUnit();
    return new Finding(
        rule,
        Path.of(unit.getSourceFile().getName()).getFileName().toString(),
        unit.getLineMap().getLineNumber(start(path)),
        path.getLeaf().toString());
  }

  long start(TreePath path) {
    return trees.getSourcePositions().getStartPosition(path.getCompilationUnit(), path.getLeaf());
  }

  long end(TreePath path, Tree tree) {
    return trees.getSourcePositions().getEndPosition(path.getCompilationUnit(), tree);
  }
}
