package benchlore.generator.script;

import com.google.javascript.jscomp.CodePrinter;
import com.google.javascript.jscomp.Compiler;
import com.google.javascript.jscomp.CompilerOptions;
import com.google.javascript.jscomp.NodeUtil;
import com.google.javascript.jscomp.SourceFile;
import com.google.javascript.rhino.Node;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A script as a tree, and the few questions the steps of this package ask of it. */
final class ScriptTree {
  private final Node root;

  private ScriptTree(Node root) {
    this.root = root;
  }

  /**
   * Reads a script.
   *
   * @throws IllegalArgumentException if it is not one
   */
  static ScriptTree parse(String script) {
    Compiler compiler = new Compiler(silent());
    compiler.initOptions(options());
    Node root = compiler.parse(SourceFile.fromCode("engine.js", script));
    if (compiler.hasErrors()) {
      throw new IllegalArgumentException("not a script: " + compiler.getErrors().get(0));
    }
    return new ScriptTree(root);
  }

  /** How scripts are read and written: the language of 2020, which the site's browsers all know. */
  static CompilerOptions options() {
    CompilerOptions options = new CompilerOptions();
    options.setLanguageIn(CompilerOptions.LanguageMode.ECMASCRIPT_NEXT);
    options.setLanguageOut(CompilerOptions.LanguageMode.ECMASCRIPT_2020);
    // Texts stand between quotes in a file of their own, never in the markup of a page.
    options.setTrustedStrings(true);
    return options;
  }

  /** A place for remarks that nobody reads; what stops the work is thrown. */
  static PrintStream silent() {
    return new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
  }

  Node root() {
    return root;
  }

  /** The whole script. */
  String text() {
    return text(root);
  }

  /** One part of a script as text, in one line. */
  static String text(Node part) {
    CompilerOptions options = options();
    options.setLineLengthThreshold(Integer.MAX_VALUE);
    return new CodePrinter.Builder(part).setCompilerOptions(options).build();
  }

  /** Every call of a function by this name, in the script's order. */
  List<Node> calls(String name) {
    List<Node> calls = new ArrayList<>();
    NodeUtil.visitPreOrder(
        root,
        node -> {
          if (isCall(node, name)) {
            calls.add(node);
          }
        });
    return calls;
  }

  /** True for {@code name(...)}. */
  static boolean isCall(Node node, String name) {
    return node.isCall() && node.getFirstChild().matchesName(name);
  }

  /** Every place a name stands, by name: its declaration and its uses. */
  Map<String, List<Node>> names() {
    Map<String, List<Node>> names = new HashMap<>();
    NodeUtil.visitPreOrder(
        root,
        node -> {
          if (node.isName()) {
            names.computeIfAbsent(node.getString(), key -> new ArrayList<>()).add(node);
          }
        });
    return names;
  }

  /** The parts of a list or of a call's arguments. */
  static List<Node> children(Node parent) {
    List<Node> children = new ArrayList<>();
    for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
      children.add(child);
    }
    return children;
  }

  /** Puts the statements of a text before a statement. */
  static void insertBefore(Node statement, String script) {
    for (Node added : children(parse(script).root())) {
      added.detach();
      added.insertBefore(statement);
    }
  }

  /** Takes a declared name out, with its {@code let} if nothing is left of it. */
  static void removeDeclared(Node declared) {
    Node parent = declared.getParent();
    declared.detach();
    if (parent.isLet() && !parent.hasChildren()) {
      parent.detach();
    }
  }
}
