package org.jawroom.report.page;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.openqa.selenium.By;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogEntry;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * A headless Chromium as Debian's packages {@code chromium} and {@code chromium-driver} install it.
 * Where either is missing the test is skipped and says so; nothing is downloaded.
 */
final class Browser implements AutoCloseable {

  /** Held here, or its level would be forgotten. */
  private static final Logger SELENIUM = Logger.getLogger("org.openqa.selenium");

  private static final String CHROMIUM = "chromium";
  private static final String CHROMEDRIVER = "chromedriver";
  private static final long PATIENCE_MS = 10_000;

  private final ChromeDriver driver;
  private final Path profile;

  private Browser(ChromeDriver driver, Path profile) {
    this.driver = driver;
    this.profile = profile;
  }

  /**
   * Skips the test where there is no browser; on the build server it fails. Called before each
   * test, so that every one of them is counted.
   */
  static void assumeThere() {
    for (String program : List.of(CHROMIUM, CHROMEDRIVER)) {
      boolean there = find(program).isPresent();
      if ("true".equals(System.getenv("CI"))) {
        Assertions.assertTrue(there, "there is no " + program + "; see .ci/run");
      }
      Assumptions.assumeTrue(there, "skipped: there is no " + program + " on this machine");
    }
  }

  /** Empty where either program is missing. */
  static Optional<Browser> start() throws IOException {
    Optional<Path> chromium = find(CHROMIUM);
    Optional<Path> chromedriver = find(CHROMEDRIVER);
    if (chromium.isEmpty() || chromedriver.isEmpty()) {
      return Optional.empty();
    }
    SELENIUM.setLevel(Level.SEVERE);
    Path profile = Files.createTempDirectory("jawroom-browser");
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    ChromeOptions options = new ChromeOptions();
    options.setBinary(chromium.get().toFile());
    options.setCapability("goog:loggingPrefs", logs);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--disable-dev-shm-usage",
        "--user-data-dir=" + profile);
    ChromeDriverService service =
        new ChromeDriverService.Builder()
            .usingDriverExecutable(chromedriver.get().toFile())
            .usingAnyFreePort()
            .build();
    Browser browser = new Browser(new ChromeDriver(service, options), profile);
    browser.size(1280, 900);
    return Optional.of(browser);
  }

  private static Optional<Path> find(String program) {
    String path = Optional.ofNullable(System.getenv("PATH")).orElse("");
    return Stream.concat(Stream.of("/usr/bin"), Stream.of(path.split(File.pathSeparator)))
        .filter(folder -> !folder.isEmpty())
        .map(folder -> Path.of(folder, program))
        .filter(Files::isExecutable)
        .findFirst();
  }

  ChromeDriver driver() {
    return driver;
  }

  /** Opens a page from disk anew, whatever was open. */
  void open(Path page) {
    driver.get("about:blank");
    driver.get(page.toUri().toString());
  }

  /** The width and height of what is seen, in CSS pixels; narrower than a window could be. */
  void size(int width, int height) {
    Map<String, Object> metrics = new HashMap<>();
    metrics.put("width", width);
    metrics.put("height", height);
    metrics.put("deviceScaleFactor", 1);
    metrics.put("mobile", false);
    driver.executeCdpCommand("Emulation.setDeviceMetricsOverride", metrics);
  }

  /** {@code light} or {@code dark}, as the reader's system would ask for. */
  void scheme(String scheme) {
    driver.executeCdpCommand(
        "Emulation.setEmulatedMedia",
        Map.of("features", List.of(Map.of("name", "prefers-color-scheme", "value", scheme))));
  }

  Object run(String script, Object... arguments) {
    return driver.executeScript(script, arguments);
  }

  WebElement find(By what) {
    return driver.findElement(what);
  }

  WebElement byId(String id) {
    return find(By.id(id));
  }

  String text(String id) {
    return byId(id).getText();
  }

  /** Waits until a script that returns a boolean says true. */
  void until(String what, String script) throws InterruptedException {
    long end = System.currentTimeMillis() + PATIENCE_MS;
    while (!Boolean.TRUE.equals(run("return " + script))) {
      if (System.currentTimeMillis() > end) {
        throw new AssertionError("in vain: " + what);
      }
      Thread.sleep(20);
    }
  }

  /** Waits for the drawing to follow what was moved. */
  void settled() {
    driver.executeAsyncScript(
        "const done = arguments[0]; requestAnimationFrame(() => requestAnimationFrame(() => done()));");
  }

  /** What the console said since it was last asked. */
  List<String> console() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .map(LogEntry::getMessage)
        .toList();
  }

  @Override
  public void close() throws IOException {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
