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
import org.jawroom.advice.Advice;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Shop;

/** The one entry: a whole shop as one HTML file. */
public final class PageFile {

  /** In the order in which they build on each other. */
  private static final List<String> SCRIPTS =
      List.of(
          "model.js",
          "words.js",
          "dom.js",
          "controls.js",
          "matrix.js",
          "scene.js",
          "drawing.js",
          "drag.js",
          "readout.js",
          "pairing.js",
          "page.js");

  /** More than the parts of a sample say, since it may be none of the largest. */
  private static final double SAFE = 1.25;

  private PageFile() {}

  /** What {@link #write} writes. */
  public static Destination destination(Path file) {
    return Destination.file(
        file,
        ReportMarks.text("<!DOCTYPE html>", "<title>Which vise goes on which machine</title>"));
  }

  /**
   * About how many bytes the page of {@code shop} has, from some of its pairings; rather too many.
   *
   * @param sample of pairings of machines and vises from everywhere in the shop, at least one
   */
  public static long estimate(Shop shop, List<Advice> sample) {
    double[] each = new double[3];
    for (Advice advice : sample) {
      List<Object> parts = PageData.parts(shop.settings(), advice);
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
   * Writes {@code file}; its directory is made if need be. It appears under its name only when it
   * is complete; if anything fails, what stood there before is left whole.
   *
   * @param advice one for each pairing, machines then vises in the order of {@code shop}
   * @throws IOException if it could not be written
   */
  public static Path write(Path file, Shop shop, List<Advice> advice, RunFacts facts)
      throws IOException {
    byte[] page = html(shop, advice, facts).getBytes(StandardCharsets.UTF_8);
    AtomicFiles.publish(destination(file), out -> out.write(page));
    return file;
  }

  static String html(Shop shop, List<Advice> advice, RunFacts facts) {
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
        // Last, so that nothing in the names is looked at.
        .replace("{data}", DataText.of(PageData.of(shop, advice, facts)));
  }

  /** As a browser hands it to its checks: line ends are one character there. */
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
