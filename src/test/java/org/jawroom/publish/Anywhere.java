package org.jawroom.publish;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** Destinations for tests that publish files of no kind: whatever is there is replaced. */
public final class Anywhere {
  private Anywhere() {}

  public static Destination of(Path folder, Iterable<String> names) {
    Map<String, ReportKind> files = new LinkedHashMap<>();
    names.forEach(name -> files.put(name, file -> true));
    return new Destination(folder, files);
  }

  public static Destination file(Path file) {
    return Destination.file(file, there -> true);
  }
}
