package benchlore.generator.script;

import com.google.javascript.rhino.Node;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * One row of the compiler's table of Java classes.
 *
 * @param name the class's name in the script
 * @param javaName its own name as the table writes it, where the script asks for it
 * @param parent the class it extends; empty for the root
 * @param interfaces what it implements
 * @param modifiers the class file's access flags
 * @param nesting where it was declared, or 0
 * @param initializer runs its static initializer, or 0
 * @param methods what is called through an object of it
 */
record CompiledClass(
    String name,
    String javaName,
    Optional<String> parent,
    List<String> interfaces,
    int modifiers,
    Node nesting,
    Node initializer,
    List<Method> methods) {
  private static final int INTERFACE = 0x200;
  private static final String RECORD = "jl_Record";
  private static final String ENUM = "jl_Enum";
  private static final String LAMBDA = "$lambda$_";

  /**
   * A method.
   *
   * @param name what it is called by
   * @param wrapper the function that hands it its object, or empty
   * @param function the function
   */
  record Method(String name, String wrapper, String function) {}

  /**
   * The rows of one call of the table's function.
   *
   * @throws IllegalArgumentException if the table has another shape than this compiler's
   */
  static List<CompiledClass> rows(Node table) {
    List<CompiledClass> rows = new ArrayList<>();
    Iterator<Node> cells = ScriptTree.children(table.getSecondChild()).iterator();
    while (cells.hasNext()) {
      rows.add(row(cells));
    }
    return rows;
  }

  private static CompiledClass row(Iterator<Node> cells) {
    Node name = cells.next();
    Node javaName = cells.next();
    // A class with a name has the number of its package after it.
    String named =
        javaName.isStringLit()
            ? ScriptTree.text(javaName) + "," + ScriptTree.text(cells.next())
            : "0";
    Node parent = cells.next();
    Node interfaces = cells.next();
    Node modifiers = cells.next();
    Node nesting = cells.next();
    Node initializer = cells.next();
    Node methods = cells.next();
    if (!name.isName() || !interfaces.isArrayLit() || !modifiers.isNumber()) {
      throw new IllegalArgumentException(
          "the table of classes has another shape than known: " + ScriptTree.text(name));
    }
    return new CompiledClass(
        name.getString(),
        named,
        parent.isName() ? Optional.of(parent.getString()) : Optional.empty(),
        ScriptTree.children(interfaces).stream().map(Node::getString).toList(),
        (int) modifiers.getDouble(),
        nesting,
        initializer,
        methods(methods));
  }

  private static List<Method> methods(Node cell) {
    List<Method> methods = new ArrayList<>();
    Iterator<Node> cells = ScriptTree.children(cell).iterator();
    while (cells.hasNext()) {
      Node names = cells.next();
      Node function = cells.next();
      boolean wrapped = function.isCall();
      for (Node name : names.isStringLit() ? List.of(names) : ScriptTree.children(names)) {
        methods.add(
            new Method(
                name.getString(),
                wrapped ? function.getFirstChild().getString() : "",
                ScriptTree.text(wrapped ? function.getSecondChild() : function)));
      }
    }
    return methods;
  }

  /** True if the language itself sees to it that every field is set before an object is used. */
  boolean setsEveryField() {
    return parent.filter(RECORD::equals).isPresent() || isEnum() || name.contains(LAMBDA);
  }

  boolean isEnum() {
    return parent.filter(ENUM::equals).isPresent();
  }

  boolean isInterface() {
    return (modifiers & INTERFACE) != 0;
  }

  boolean hasJavaName() {
    return !javaName.equals("0");
  }

  /** The row again, without methods and with no interface but those. */
  String row(List<String> interfacesKept) {
    return String.join(
        ",",
        name,
        javaName,
        parent.orElse("0"),
        "[" + String.join(",", interfacesKept) + "]",
        Integer.toString(modifiers),
        ScriptTree.text(nesting),
        ScriptTree.text(initializer),
        "0");
  }
}
