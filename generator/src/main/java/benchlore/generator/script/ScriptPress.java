package benchlore.generator.script;

import benchlore.generator.browser.EngineEntry;
import com.google.javascript.jscomp.AbstractCommandLineRunner;
import com.google.javascript.jscomp.CheckLevel;
import com.google.javascript.jscomp.CompilationLevel;
import com.google.javascript.jscomp.Compiler;
import com.google.javascript.jscomp.CompilerOptions;
import com.google.javascript.jscomp.DiagnosticGroups;
import com.google.javascript.jscomp.Result;
import com.google.javascript.jscomp.SourceFile;
import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the script that the compiler wrote small: {@code ScriptPress FROM TO}.
 *
 * <p>The names a page calls are those of {@link EngineEntry}; all others are shortened.
 */
public final class ScriptPress {
  private static final String HEAD =
      "// Parts come from the TeaVM class library, Apache License 2.0: see vendor/README.md.\n";

  private ScriptPress() {}

  /**
   * Reads one script and writes another.
   *
   * @param args the script to read and the place to write
   */
  public static void main(String[] args) throws IOException {
    Path to = Path.of(args[1]);
    Files.createDirectories(to.getParent());
    Files.writeString(to, press(Files.readString(Path.of(args[0]))));
  }

  /**
   * A script that does the same in fewer bytes.
   *
   * @throws IllegalArgumentException if it is not a script of the known compiler
   */
  static String press(String script) throws IOException {
    ScriptTree tree = ScriptTree.parse(script);
    ClassTable.rewrite(tree);
    StaticFields.rewrite(tree);
    TextPool.rewrite(tree);
    return HEAD + optimise(tree.text());
  }

  private static String optimise(String script) throws IOException {
    CompilerOptions options = ScriptTree.options();
    CompilationLevel.ADVANCED_OPTIMIZATIONS.setOptionsForCompilationLevel(options);
    options.setEmitUseStrict(true);
    options.setWarningLevel(DiagnosticGroups.CHECK_TYPES, CheckLevel.OFF);
    Compiler compiler = new Compiler(ScriptTree.silent());
    Result result =
        compiler.compile(externs(), List.of(SourceFile.fromCode("engine.js", script)), options);
    if (!result.success) {
      throw new IllegalArgumentException("not optimised: " + result.errors);
    }
    return compiler.toSource();
  }

  /** Names that belong to the browser or to the page. */
  private static List<SourceFile> externs() throws IOException {
    List<SourceFile> externs =
        new ArrayList<>(
            AbstractCommandLineRunner.getBuiltinExterns(CompilerOptions.Environment.BROWSER));
    StringBuilder page = new StringBuilder("var main; var EngineEntry;");
    for (Method function : EngineEntry.class.getDeclaredMethods()) {
      if (Modifier.isPublic(function.getModifiers())) {
        page.append("EngineEntry." + function.getName() + ";");
      }
    }
    externs.add(SourceFile.fromCode("page.js", page.toString()));
    return externs;
  }
}
