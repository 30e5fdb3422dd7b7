package benchlore.generator.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.openqa.selenium.By;
import org.openqa.selenium.PageLoadStrategy;
import org.openqa.selenium.WebDriverException;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntries;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A running browser with an empty profile, no network, and a watch on what its pages do.
 *
 * <p>Use it from one thread, and close it: closing ends the browser and deletes the profile. As an
 * extension of a test class it closes itself, and after every test nothing may have gone wrong.
 */
final class Browser implements AutoCloseable, AfterEachCallback, AfterAllCallback {
  /** A small phone's width and a desk's, in CSS pixels. */
  static final int NARROW = 360;

  static final int WIDE = 1280;
  private static final int TALL = 900;
  private static final List<String> FLAGS =
      List.of(
          "--headless=new",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--disable-dev-shm-usage",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--disable-default-apps",
          "--disable-extensions",
          "--lang=en-GB",
          // Whatever a page might ask of the network fails at once, and shows in the console.
          "--host-resolver-rules=MAP * ~NOTFOUND");

  /** Kept, so that the setting below outlives the first collection of garbage. */
  private static final Logger DEVTOOLS = Logger.getLogger("org.openqa.selenium.devtools");

  static {
    // It warns that it has no typed commands for this browser's version; none are used here.
    DEVTOOLS.setLevel(Level.SEVERE);
  }

  private final Profile profile;
  private final ChromeDriver driver;
  private String watched = "";

  private Browser(Profile profile, ChromeDriver driver) {
    this.profile = profile;
    this.driver = driver;
  }

  static Browser start() {
    BrowserInstall install = BrowserInstall.require();
    Profile profile = Profile.fresh();
    try {
      Browser browser = new Browser(profile, drive(install, profile));
      browser.width(WIDE);
      browser.open("about:blank");
      browser.requests();
      return browser;
    } catch (WebDriverException e) {
      profile.close();
      throw e;
    }
  }

  /** A browser for all tests of a class, to be registered as an extension in a static field. */
  static Browser watching(SiteFolder site) {
    Browser browser = start();
    browser.watched = site.prefix();
    return browser;
  }

  @Override
  public void afterEach(ExtensionContext context) {
    assertEquals(List.of(), troubles(watched));
  }

  @Override
  public void afterAll(ExtensionContext context) {
    close();
  }

  private static ChromeDriver drive(BrowserInstall install, Profile profile) {
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(install.driver().toFile())
            .usingAnyFreePort()
            .withSilent(true)
            .build();
    return new ChromeDriver(service, options(install, profile));
  }

  private static ChromeOptions options(BrowserInstall install, Profile profile) {
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    logs.enable(LogType.PERFORMANCE, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(install.browser().toFile());
    options.addArguments(FLAGS);
    options.addArguments("--user-data-dir=" + profile.folder());
    options.setPageLoadStrategy(PageLoadStrategy.NORMAL);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    return options;
  }

  ChromeDriver driver() {
    return driver;
  }

  void open(String address) {
    driver.get(address);
  }

  /** Sets the width of the page, free of any least width of a window. */
  void width(int cssPixels) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", cssPixels, "height", TALL, "deviceScaleFactor", 1, "mobile", false));
  }

  void scheme(Scheme scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme.css()))));
  }

  /** The language dates and figures are written in. */
  void locale(String tag) {
    driver.executeCdpCommand("Emulation.setLocaleOverride", Map.of("locale", tag));
  }

  void scriptsOff() {
    driver.executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
  }

  /** What went wrong since the last call: console lines, refusals, requests that left the site. */
  List<String> troubles(String prefix) {
    return new Watch(prefix).troubles(driver.manage().logs().get(LogType.BROWSER), performance());
  }

  /** Every address asked for since the last call of this or of {@link #troubles}. */
  List<String> requests() {
    return Watch.requests(performance());
  }

  private LogEntries performance() {
    return driver.manage().logs().get(LogType.PERFORMANCE);
  }

  Object script(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  String text(String selector) {
    return driver.findElement(By.cssSelector(selector)).getText();
  }

  @Override
  public void close() {
    try {
      driver.quit();
    } finally {
      profile.close();
    }
  }

  /** The reader's choice of colours. */
  enum Scheme {
    LIGHT,
    DARK;

    String css() {
      return this == DARK ? "dark" : "light";
    }
  }
}
