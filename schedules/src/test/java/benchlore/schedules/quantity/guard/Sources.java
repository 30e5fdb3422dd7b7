package benchlore.schedules.quantity.guard;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.tools.Diagnostic;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** Parses Java sources, gives every expression its type and runs the rules over them. */
final class Sources {
  private Sources() {}

  /** Every finding in the sources under a folder, by file and line. */
  static List<Finding> under(Path folder) throws IOException {
    return under(folder, "\0");
  }

  /** The same without the sources that hold some text, such as a mark of a missing library. */
  static List<Finding> under(Path folder, String without) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null);
        Stream<Path> found = Files.walk(folder)) {
      List<Path> sources = new ArrayList<>();
      for (Path file : found.filter(f -> f.toString().endsWith(".java")).sorted().toList()) {
        if (!Files.readString(file).contains(without)) {
          sources.add(file);
        }
      }
      List<JavaFileObject> units = new ArrayList<>();
      files.getJavaFileObjectsFromPaths(sources).forEach(units::add);
      return scan(compiler, files, units);
    }
  }

  /** Every finding in one source given as text; its public class is {@code Snippet}. */
  static List<Finding> in(String source) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
      return scan(compiler, files, List.of(new Text(source)));
    }
  }

  private static List<Finding> scan(
      JavaCompiler compiler, StandardJavaFileManager files, List<JavaFileObject> units)
      throws IOException {
    DiagnosticCollector<JavaFileObject> said = new DiagnosticCollector<>();
    JavacTask task =
        (JavacTask)
            compiler.getTask(null, files, said, List.of("-proc:none", "-Xlint:none"), null, units);
    List<CompilationUnitTree> trees = new ArrayList<>();
    task.parse().forEach(trees::add);
    task.analyze();
    for (Diagnostic<?> diagnostic : said.getDiagnostics()) {
      if (diagnostic.getKind() == Diagnostic.Kind.ERROR) {
        throw new IllegalArgumentException(diagnostic.toString());
      }
    }
    Typed typed = new Typed(Trees.instance(task), task.getTypes(), task.getElements());
    List<Finding> findings = new ArrayList<>();
    for (CompilationUnitTree tree : trees) {
      new GroupingScan(typed, findings).scan(tree, null);
      new CallScan(typed, findings).scan(tree, null);
    }
    return findings;
  }

  private static final class Text extends SimpleJavaFileObject {
    private final String source;

    Text(String source) {
      super(URI.create("string:///Snippet.java"), Kind.SOURCE);
      this.source = source;
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
      return source;
    }
  }
}
