package benchlore.generator.house;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/** The sources of both modules, parsed by the JDK's own compiler. */
final class Sources {
  /** Tests run in the module's folder. */
  static final Path ROOT = Path.of("..");

  private static final List<String> MODULES = List.of("schedules", "generator");

  /**
   * One parsed file.
   *
   * @param path from the repository's root
   * @param unit its tree
   * @param text its text
   * @param positions where each tree starts and ends
   */
  record Source(String path, CompilationUnitTree unit, String text, SourcePositions positions) {
    String packageName() {
      return unit.getPackageName().toString();
    }

    List<String> lines() {
      return text.lines().toList();
    }

    /** The text without comments, so that prose about a thing is no use of it. */
    String code() {
      return text.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)//.*$", "");
    }
  }

  private Sources() {}

  /** Every file of both modules' {@code src/main/java}. */
  static List<Source> main() throws IOException {
    return parsed(MODULES.stream().map(module -> Path.of(module, "src", "main", "java")).toList());
  }

  /** Every file of both modules, tests too. */
  static List<Source> all() throws IOException {
    return parsed(MODULES.stream().map(module -> Path.of(module, "src")).toList());
  }

  private static List<Source> parsed(List<Path> folders) throws IOException {
    List<Path> files = new ArrayList<>();
    for (Path folder : folders) {
      try (Stream<Path> found = Files.walk(ROOT.resolve(folder))) {
        found.filter(file -> file.toString().endsWith(".java")).sorted().forEach(files::add);
      }
    }
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
      JavacTask task =
          (JavacTask)
              compiler.getTask(
                  null,
                  manager,
                  null,
                  List.of("-proc:none"),
                  null,
                  manager.getJavaFileObjectsFromPaths(files));
      SourcePositions positions = Trees.instance(task).getSourcePositions();
      List<Source> sources = new ArrayList<>();
      for (CompilationUnitTree unit : task.parse()) {
        sources.add(source(unit, positions));
      }
      return sources;
    }
  }

  private static Source source(CompilationUnitTree unit, SourcePositions positions) {
    Path file = Path.of(unit.getSourceFile().toUri());
    Path root = ROOT.toAbsolutePath().normalize();
    String path = root.relativize(file.toAbsolutePath().normalize()).toString();
    try {
      return new Source(path.replace('\\', '/'), unit, Files.readString(file), positions);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
