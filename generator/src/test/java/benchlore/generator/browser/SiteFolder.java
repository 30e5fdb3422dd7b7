package benchlore.generator.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A written site on disk. Pages are named by their path inside the folder, with forward slashes:
 * {@code router-bits/chamfer-bit.html}.
 */
record SiteFolder(Path root) {
  private static final String PLANS = "plans";
  private static final String TABLES = "tables";

  /** Folders with a list page that are no shelves of records. */
  private static final Set<String> NO_SHELVES = Set.of(PLANS, TABLES, "planner");

  /** One page of each template that the tables have; the larger ones differ in length alone. */
  private static final List<String> TABLE_FORMS =
      List.of(
          "tables/index.html",
          "tables/finish-over-finish.html",
          "tables/finish-by-place.html",
          "tables/finish-by-place-whole.html");

  SiteFolder {
    Objects.requireNonNull(root, "root");
    if (!Files.isRegularFile(root.resolve("index.html"))) {
      throw new IllegalArgumentException(
          "root: no index.html in " + root + "; write the demo site first: mvn package");
    }
    root = realPath(root);
  }

  /** The demo site of this build, from the system property {@code benchlore.site}. */
  static SiteFolder fromBuild() {
    String path = System.getProperty("benchlore.site");
    if (path == null) {
      throw new IllegalStateException("Set -Dbenchlore.site to the folder of a written site");
    }
    return new SiteFolder(Path.of(path));
  }

  /** The address every request of the site must start with, ending in a slash. */
  String prefix() {
    String address = root.toUri().toString();
    return address.endsWith("/") ? address : address + "/";
  }

  String address(String page) {
    return prefix() + page;
  }

  /** Every file of the site, sorted. */
  List<String> files() {
    try (Stream<Path> walk = Files.walk(root)) {
      return walk.filter(Files::isRegularFile).map(this::name).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every HTML page of the site, sorted. */
  List<String> pages() {
    return files().stream().filter(file -> file.endsWith(".html")).toList();
  }

  /** The shelves: folders that hold the list page of a kind of record, sorted. */
  List<String> shelves() {
    return pages().stream()
        .filter(page -> page.endsWith("/index.html"))
        .map(page -> page.substring(0, page.length() - "/index.html".length()))
        .filter(folder -> !NO_SHELVES.contains(folder))
        .toList();
  }

  /** The pages of one folder, its list page apart. */
  List<String> records(String folder) {
    return pages().stream()
        .filter(page -> page.startsWith(folder + "/") && !page.endsWith("/index.html"))
        .toList();
  }

  /** The list of plans and every plan. */
  List<String> planPages() {
    return pages().stream().filter(page -> page.startsWith(PLANS + "/")).toList();
  }

  /** The list of tables and every table. */
  List<String> tablePages() {
    return pages().stream().filter(page -> page.startsWith(TABLES + "/")).toList();
  }

  /** The pages that set records of a shelf side by side. */
  List<String> comparePages() {
    return pages().stream().filter(page -> page.startsWith("compare/")).toList();
  }

  /**
   * One page of each sort: the pages at the top, one list, every plan page, every table page, and
   * of every other folder the longest page, since it uses most of its template.
   */
  List<String> oneOfEachSort() {
    List<String> sorts =
        new ArrayList<>(pages().stream().filter(page -> !page.contains("/")).toList());
    sorts.add(shelves().get(0) + "/index.html");
    sorts.addAll(planPages());
    sorts.addAll(tablePages().stream().filter(TABLE_FORMS::contains).toList());
    for (String folder : folders()) {
      records(folder).stream()
          .filter(page -> !folder.equals(PLANS) && !folder.equals(TABLES))
          .max(Comparator.comparingLong(this::size))
          .ifPresent(sorts::add);
    }
    return List.copyOf(sorts);
  }

  private List<String> folders() {
    return pages().stream()
        .filter(page -> page.contains("/"))
        .map(page -> page.substring(0, page.indexOf('/')))
        .distinct()
        .toList();
  }

  String read(String file) {
    try {
      return Files.readString(root.resolve(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private long size(String page) {
    try {
      return Files.size(root.resolve(page));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private String name(Path file) {
    return root.relativize(file).toString().replace('\\', '/');
  }

  private static Path realPath(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
