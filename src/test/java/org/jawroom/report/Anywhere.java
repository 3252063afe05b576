package org.jawroom.report;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Destinations for tests that publish files of no kind: whatever is there is replaced. */
final class Anywhere {
  private Anywhere() {}

  static Destination of(Path folder, Iterable<String> names) {
    Map<String, ReportKind> files = new LinkedHashMap<>();
    names.forEach(name -> files.put(name, file -> true));
    return new Destination(folder, files);
  }

  static Destination file(Path file) {
    return Destination.file(file, there -> true);
  }
}
