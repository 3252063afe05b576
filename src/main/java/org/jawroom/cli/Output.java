package org.jawroom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jawroom.publish.Destination;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Looks at where a command is to write, before it begins. */
final class Output {

  /** What other commands take for standard output. */
  static final Path STANDARD = Path.of("-");

  private Output() {}

  /** Refuses {@code -} where a folder is to be named. */
  static void isFolder(CommandSpec spec, Path folder) {
    if (folder.equals(STANDARD)) {
      throw new ParameterException(
          spec.commandLine(),
          "These files go into a folder, not to standard output; for a folder of that name write"
              + " ./-");
    }
  }

  /**
   * Refuses a file whose name has none of {@code endings}.
   *
   * @param endings in lower case, each with its dot
   */
  static void isFile(CommandSpec spec, Path file, String... endings) {
    String name = file.getFileName() == null ? "" : file.getFileName().toString();
    if (Arrays.stream(endings).noneMatch(name.toLowerCase(Locale.ROOT)::endsWith)) {
      throw new ParameterException(
          spec.commandLine(), file + " should end in " + String.join(" or ", endings) + ".");
    }
  }

  /**
   * Refuses to write over what was read, however either is spelt, or over anything but a report of
   * the same kind.
   *
   * @param inputs files that were read
   * @throws IOException with the reason, if it is not an input that would be lost
   */
  static void check(CommandSpec spec, Destination destination, List<Path> inputs)
      throws IOException {
    for (Path output : destination.paths()) {
      for (Path input : inputs) {
        if (Files.exists(output) && Files.exists(input) && Files.isSameFile(output, input)) {
          throw new ParameterException(
              spec.commandLine(),
              output
                  + " is read by this run and would be overwritten; name another place with -o.");
        }
      }
    }
    destination.check();
  }
}
