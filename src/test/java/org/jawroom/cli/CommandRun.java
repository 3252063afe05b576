package org.jawroom.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Path;
import org.jawroom.launch.Main;

/**
 * A command that was run on the demo.
 *
 * @param err what it said on standard error, lines ended as on Unix
 */
public record CommandRun(int status, String err) {
  public static final Path TABLES = Path.of("inputs/demo");

  public static CommandRun of(String... args) {
    StringWriter err = new StringWriter();
    int status = Main.run(args, new PrintWriter(Writer.nullWriter()), new PrintWriter(err, true));
    return new CommandRun(status, err.toString().replace("\r\n", "\n"));
  }

  /** Without the lines that begin with {@code start}. */
  public CommandRun without(String start) {
    return new CommandRun(
        status, String.join("", err.lines().filter(line -> !line.startsWith(start)).toList()));
  }

  /** The command line by which {@code command} writes {@code name} into {@code folder}. */
  public static String[] args(String command, Path input, Path folder, String name) {
    String file = folder.resolve(name).toString();
    String in = input.toString();
    return switch (command) {
      case "matrix" -> new String[] {"matrix", in, "-o", folder.toString()};
      case "reconcile" -> new String[] {"reconcile", in, "-o", folder.toString()};
      case "assess" -> new String[] {"assess", in, "-o", folder.toString()};
      case "plan" -> new String[] {"plan", in, "--cards", "-o", folder.toString()};
      case "page", "tape" -> new String[] {command, in, "-o", file};
      default -> new String[] {command, in, "small closed mill", "plain 160", "-o", file};
    };
  }
}
