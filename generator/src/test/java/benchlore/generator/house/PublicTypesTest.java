package benchlore.generator.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.Tree;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.lang.model.element.Modifier;
import org.junit.jupiter.api.Test;

/**
 * A top-level type is public where another package needs it: it names it, or gets one from a public
 * type of the same package. Where the program begins is needed by whoever starts it.
 */
final class PublicTypesTest {
  private static final Set<String> BEGINNINGS =
      Set.of(
          "benchlore.generator.cli.Benchlore",
          // The compiler to JavaScript begins here.
          "benchlore.generator.browser.EngineScript");

  /** A file's package and its code, read once. */
  private record Code(String packageName, String text) {
    static Code of(Sources.Source source) {
      return new Code(source.packageName(), source.code());
    }
  }

  private record Shown(Code code, String type) {
    String name() {
      return code.packageName() + "." + type;
    }
  }

  @Test
  void aTypeIsPublicOnlyWhereAnotherPackageNeedsIt() throws IOException {
    List<Code> all = Sources.all().stream().map(Code::of).toList();
    List<Shown> shown = shown();
    assertTrue(shown.size() > 100, "only " + shown.size() + " public types were found");
    Set<String> needed = new HashSet<>(BEGINNINGS);
    for (Shown type : shown) {
      if (all.stream().anyMatch(other -> names(other, type))) {
        needed.add(type.name());
      }
    }
    // What a needed type gives is needed too, and what that gives in turn.
    boolean more = true;
    while (more) {
      more = false;
      for (Shown type : shown) {
        boolean given =
            shown.stream().anyMatch(by -> needed.contains(by.name()) && mentions(by, type));
        more = (given && needed.add(type.name())) || more;
      }
    }
    List<String> idle = new ArrayList<>();
    shown.stream().map(Shown::name).filter(name -> !needed.contains(name)).forEach(idle::add);
    assertEquals(List.of(), idle, "no other package needs these");
  }

  private static List<Shown> shown() throws IOException {
    List<Shown> shown = new ArrayList<>();
    for (Sources.Source source : Sources.main()) {
      for (Tree type : source.unit().getTypeDecls()) {
        if (type instanceof ClassTree declared
            && declared.getModifiers().getFlags().contains(Modifier.PUBLIC)) {
          shown.add(new Shown(Code.of(source), declared.getSimpleName().toString()));
        }
      }
    }
    return shown;
  }

  private static boolean names(Code other, Shown type) {
    return !other.packageName().equals(type.code().packageName())
        && other.text().contains(type.name())
        && Pattern.compile(Pattern.quote(type.name()) + "\\b").matcher(other.text()).find();
  }

  private static boolean mentions(Shown by, Shown type) {
    return !by.name().equals(type.name())
        && by.code().packageName().equals(type.code().packageName())
        && by.code().text().contains(type.type())
        && Pattern.compile("\\b" + type.type() + "\\b").matcher(by.code().text()).find();
  }
}
