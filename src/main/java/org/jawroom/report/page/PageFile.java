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
import org.jawroom.advice.Advice;
import org.jawroom.report.AtomicFiles;
import org.jawroom.report.Destination;
import org.jawroom.report.ReportKind;
import org.jawroom.report.RunFacts;
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

  private PageFile() {}

  /** What {@link #write} writes. */
  public static Destination destination(Path file) {
    return Destination.file(
        file,
        ReportKind.text("<!DOCTYPE html>", "<title>Which vise goes on which machine</title>"));
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
