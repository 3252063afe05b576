package org.jawroom.cli.refusal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.jawroom.publish.Destination;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Checks where a command is to write, before it starts. */
public final class Output {

  /** Other commands read it as standard output. */
  public static final Path STANDARD = Path.of("-");

  private Output() {}

  /** Refuses {@code -} as the name of a folder. */
  public static void isFolder(CommandSpec spec, Path folder) {
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
  public static void isFile(CommandSpec spec, Path file, String... endings) {
    String name = file.getFileName() == null ? "" : file.getFileName().toString();
    if (Arrays.stream(endings).noneMatch(name.toLowerCase(Locale.ROOT)::endsWith)) {
      throw new ParameterException(
          spec.commandLine(), file + " should end in " + String.join(" or ", endings) + ".");
    }
  }

  /**
   * Refuses to overwrite an input, however either path is spelt, or anything but a report of the
   * same kind.
   *
   * @param inputs the files read
   * @throws IOException with the reason, if the destination would lose a file other than an input
   */
  public static void check(CommandSpec spec, Destination destination, List<Path> inputs)
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
