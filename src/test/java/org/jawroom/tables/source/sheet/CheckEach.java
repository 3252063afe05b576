package org.jawroom.tables.source.sheet;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jawroom.launch.Main;

/** Runs {@code check} on one input after the other in one JVM, and keeps how each ended. */
final class CheckEach {
  private CheckEach() {}

  public static void main(String[] inputs) throws IOException {
    for (String input : inputs) {
      StringWriter err = new StringWriter();
      int status =
          Main.run(
              new String[] {"check", input},
              new PrintWriter(Writer.nullWriter()),
              new PrintWriter(err, true));
      Files.writeString(kept(Path.of(input)), status + "\n" + err);
    }
  }

  /** The exit status in the first line, then what was printed on standard error. */
  static Path kept(Path input) {
    return input.resolveSibling(input.getFileName() + ".txt");
  }
}
