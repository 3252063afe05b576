package org.jawroom.launch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The tool run in a Java of its own, as from a shell, with what makes a short run quick. */
public record ToolRun(int status, String out, String err) {

  /** Far longer than any of it takes: what takes longer hangs. */
  private static final int SECONDS = 300;

  /**
   * @param megabytes of memory for its objects
   */
  public static ToolRun of(int megabytes, String... arguments)
      throws IOException, InterruptedException {
    return of(command(megabytes, arguments));
  }

  /** A command that is not yet started. */
  public static ToolRun of(ProcessBuilder command) throws IOException, InterruptedException {
    Path out = Files.createTempFile("out", ".txt");
    Path err = Files.createTempFile("err", ".txt");
    try {
      Process process = command.redirectOutput(out.toFile()).redirectError(err.toFile()).start();
      if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
        throw new AssertionError(
            "hangs: " + String.join(" ", command.command()) + "\n" + read(err));
      }
      return new ToolRun(process.exitValue(), read(out), read(err));
    } finally {
      Files.delete(out);
      Files.delete(err);
    }
  }

  /** Not yet started. */
  public static ProcessBuilder command(int megabytes, String... arguments) {
    return command(megabytes, Main.class, arguments);
  }

  /** The same with another main class. */
  public static ProcessBuilder command(int megabytes, Class<?> main, String... arguments) {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + megabytes + "m",
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Djava.awt.headless=true",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
    command.addAll(List.of(arguments));
    return new ProcessBuilder(command);
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }
}
