package org.jawroom.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Shop;

/** Writes a whole shop as one HTML file; the entry point of the package. */
public final class PageFile {

  /** In dependency order: each script uses only those before it. */
  private static final List<String> SCRIPTS =
      List.of(
          "model.js",
          "suppose.js",
          "found.js",
          "words.js",
          "dom.js",
          "controls.js",
          "matrix.js",
          "scene.js",
          "turned.js",
          "drawing.js",
          "drag.js",
          "standing.js",
          "readout.js",
          "openreadings.js",
          "checks.js",
          "bench.js",
          "pairing.js",
          "page.js");

  /** Safety factor on the estimate: the sample may miss the largest parts. */
  private static final double SAFE = 1.25;

  private PageFile() {}

  /** Returns the file that {@link #write} writes. */
  public static Destination destination(Path file) {
    return Destination.file(
        file,
        ReportMarks.text("<!DOCTYPE html>", "<title>Which vise goes on which machine</title>"));
  }

  /**
   * Estimates the size of the page of {@code shop} in bytes from a sample of its pairings; errs
   * toward too large.
   *
   * @param sample pairings of machines and vises spread over the whole shop, at least one
   */
  public static long estimate(Shop shop, List<PagePairing> sample) {
    double[] each = new double[3];
    for (PagePairing pairing : sample) {
      List<Object> parts = PageData.parts(shop.settings(), pairing);
      for (int part = 0; part < each.length; part++) {
        int length = DataText.of(parts.get(part)).getBytes(StandardCharsets.UTF_8).length + 1;
        each[part] += (double) length / sample.size();
      }
    }
    int machines = shop.machines().size();
    int vises = shop.vises().size();
    double data = machines * each[0] + vises * each[1] + (double) machines * vises * each[2];
    long frame =
        Stream.concat(SCRIPTS.stream(), Stream.of("page.html", "page.css"))
            .mapToLong(name -> resource(name).length())
            .sum();
    return frame + (long) (data * SAFE);
  }

  /**
   * Writes {@code file}, creating its directory if missing. The file appears under its name only
   * when it is complete; on any failure the previous file stays unchanged.
   *
   * @param pairings machines then vises in the order of {@code shop}
   * @param standing what stands on its machines now
   * @throws IOException if the file could not be written
   */
  public static Path write(
      Path file,
      Shop shop,
      List<PagePairing> pairings,
      List<StandingOutcome> standing,
      RunFacts facts)
      throws IOException {
    byte[] page = html(shop, pairings, standing, facts).getBytes(StandardCharsets.UTF_8);
    AtomicFiles.publish(destination(file), out -> out.write(page));
    return file;
  }

  static String html(
      Shop shop, List<PagePairing> pairings, List<StandingOutcome> standing, RunFacts facts) {
    String style = resource("page.css");
    String script =
        SCRIPTS.stream()
            .map(PageFile::resource)
            .collect(Collectors.joining("", "'use strict';\n", ""));
    return resource("page.html")
        .replace("{script-hash}", hash(script))
        .replace("{style-hash}", hash(style))
        .replace("{style}", style)
        .replace("{script}", script)
        // The data come last, so that a placeholder within a name is not replaced.
        .replace("{data}", DataText.of(PageData.of(shop, pairings, standing, facts)));
  }

  /** Line ends become LF, because browsers normalise them before they check the hash. */
  private static String resource(String name) {
    try (InputStream in = PageFile.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private static String hash(String text) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return "sha256-" + Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException everyPlatformHasIt) {
      throw new IllegalStateException(everyPlatformHasIt);
    }
  }
}
