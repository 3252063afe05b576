package org.jawroom.tables;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The tool run in a Java of its own, as from a shell. */
record ToolRun(int status, String out, String err) {

  /**
   * @param megabytes of memory for its objects
   */
  static ToolRun of(int megabytes, String... arguments) throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    try {
      List<String> command =
          new ArrayList<>(
              List.of(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-Xmx" + megabytes + "m",
                  "-Djava.awt.headless=true",
                  "-cp",
                  System.getProperty("java.class.path"),
                  "org.jawroom.cli.Main"));
      command.addAll(List.of(arguments));
      Process process =
          new ProcessBuilder(command)
              .redirectOutput(out.toFile())
              .redirectError(err.toFile())
              .start();
      int status = process.waitFor();
      return new ToolRun(status, read(out), read(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
