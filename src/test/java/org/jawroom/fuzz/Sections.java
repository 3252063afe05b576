package org.jawroom.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Several files in one input: each begins behind a line {@code @NAME}. Bytes are kept as they are;
 * what stands before the first such line belongs to no file.
 */
public final class Sections {
  private Sections() {}

  /** The files by name, the last of a name alone. */
  public static Map<String, byte[]> of(byte[] input) {
    // One letter a byte, so that nothing is lost.
    String text = new String(input, StandardCharsets.ISO_8859_1);
    Map<String, byte[]> files = new LinkedHashMap<>();
    String[] pieces = ("\n" + text).split("\n@", -1);
    for (int i = 1; i < pieces.length; i++) {
      int end = pieces[i].indexOf('\n');
      String name = end < 0 ? pieces[i] : pieces[i].substring(0, end);
      String content = end < 0 ? "" : pieces[i].substring(end + 1) + "\n";
      files.put(name, content.getBytes(StandardCharsets.ISO_8859_1));
    }
    return files;
  }
}
