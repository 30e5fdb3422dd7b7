package benchlore.generator.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A browser and the driver that steers it, of the same major version.
 *
 * <p>They are looked for in {@code /usr/bin}, then along the PATH. Where one is missing, a root
 * user of a Debian-like system gets the packages installed; anyone else gets a message that says
 * what to install. Nothing is ever skipped for want of a browser.
 */
record BrowserInstall(Path browser, Path driver) {
  private static final List<String> BROWSERS =
      List.of("chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome");
  private static final List<String> DRIVERS = List.of("chromedriver");
  private static final List<String> PACKAGES = List.of("chromium", "chromium-driver");
  private static final Pattern MAJOR = Pattern.compile("(\\d+)\\.\\d+\\.\\d+");

  /** Finds the pair, installs it if that is possible, or fails saying what to install. */
  static synchronized BrowserInstall require() {
    return requireIn(
        searchPath(System.getenv("PATH")), "root".equals(System.getProperty("user.name")));
  }

  static BrowserInstall requireIn(List<Path> folders, boolean mayInstall) {
    Optional<BrowserInstall> found = lookIn(folders);
    if (found.isEmpty() && mayInstall) {
      install(folders);
      found = lookIn(folders);
    }
    return found.orElseThrow(() -> new AssertionError(advice(folders)));
  }

  static List<Path> searchPath(String path) {
    Stream<String> rest =
        path == null ? Stream.of() : Pattern.compile(File.pathSeparator).splitAsStream(path);
    return Stream.concat(Stream.of("/usr/bin"), rest)
        .filter(folder -> !folder.isBlank())
        .map(Path::of)
        .distinct()
        .toList();
  }

  /** The first driver that has a browser of its own major version in these folders. */
  static Optional<BrowserInstall> lookIn(List<Path> folders) {
    List<Path> browsers = programs(BROWSERS, folders);
    for (Path driver : programs(DRIVERS, folders)) {
      Optional<String> version = majorVersion(driver);
      for (Path browser : browsers) {
        if (version.isPresent() && majorVersion(browser).equals(version)) {
          return Optional.of(new BrowserInstall(browser, driver));
        }
      }
    }
    return Optional.empty();
  }

  static String advice(List<Path> folders) {
    return "The browser tests need Chromium (or Chrome) and a chromedriver of the same major"
        + " version.\nOn Debian: apt-get install chromium chromium-driver\n"
        + "Elsewhere put both on the PATH. Found browsers: "
        + withVersions(programs(BROWSERS, folders))
        + "; drivers: "
        + withVersions(programs(DRIVERS, folders))
        + ".";
  }

  private static String withVersions(List<Path> programs) {
    List<String> said = new ArrayList<>();
    for (Path program : programs) {
      said.add(program + " (" + majorVersion(program).orElse("doesn't run") + ")");
    }
    return said.isEmpty() ? "none" : String.join(", ", said);
  }

  private static List<Path> programs(List<String> names, List<Path> folders) {
    return names.stream()
        .flatMap(name -> folders.stream().map(folder -> folder.resolve(name)))
        .filter(file -> Files.isRegularFile(file) && Files.isExecutable(file))
        .toList();
  }

  private static Optional<String> majorVersion(Path program) {
    List<String> lines = new ArrayList<>();
    new Command(List.of(program.toString(), "--version"), Duration.ofSeconds(20)).run(lines::add);
    Matcher version = MAJOR.matcher(String.join("\n", lines));
    return version.find() ? Optional.of(version.group(1)) : Optional.empty();
  }

  private static void install(List<Path> folders) {
    List<Path> found = programs(List.of("apt-get"), folders);
    if (found.isEmpty()) {
      return;
    }
    String tool = found.get(0).toString();
    System.out.println("No browser with its driver here; installing " + PACKAGES);
    apt(Duration.ofMinutes(4), tool, "update");
    List<String> words = new ArrayList<>(List.of("install", "-y", "--no-install-recommends"));
    words.addAll(PACKAGES);
    words.add(0, tool);
    apt(Duration.ofMinutes(10), words.toArray(String[]::new));
  }

  private static void apt(Duration limit, String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(1, List.of("-o", "Acquire::Retries=3", "-o", "Acquire::http::Timeout=30"));
    all.addAll(1, List.of("-o", "DPkg::Lock::Timeout=120"));
    Command.Outcome outcome = new Command(all, limit).run(System.out::println);
    System.out.println(String.join(" ", all) + ": " + outcome);
  }
}
