package org.jawroom.app.input;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.tables.source.grid.FileTrouble;
import org.jawroom.tables.source.grid.UnreadableInput;

/**
 * Detects file names that Java cannot decode in the current locale: under {@code LC_ALL=C} all
 * beyond ASCII, otherwise those in another encoding. Java puts U+FFFD for such bytes and would
 * write to a folder of another name, or find nothing.
 */
public final class UnreadableNames {
  private static final String UNREADABLE = "\ufffd";

  private UnreadableNames() {}

  /**
   * One line that says so if an argument or the current folder has such a name: Java would pass
   * another name to a child process, and does not work in a folder it cannot name.
   */
  public static Optional<String> line(String[] args) {
    for (String arg : args) {
      if (arg.contains(UNREADABLE)) {
        return Optional.of("\"" + arg + "\" " + why());
      }
    }
    return ofCurrentFolder();
  }

  private static Optional<String> ofCurrentFolder() {
    String folder = System.getProperty("user.dir");
    return folder.contains(UNREADABLE) && !isThere(folder)
        ? Optional.of("The name of the current folder, \"" + folder + "\", " + why())
        : Optional.empty();
  }

  /**
   * Refuses a folder with a CSV file of such a name, since it might be a table.
   *
   * @throws UnreadableInput with one line that says so
   */
  static void refuseIn(Path folder) throws UnreadableInput {
    if (!Files.isDirectory(folder)) {
      return;
    }
    Optional<String> found;
    try (Stream<Path> files = Files.list(folder)) {
      found =
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.contains(UNREADABLE))
              .filter(name -> name.toLowerCase(Locale.ROOT).endsWith(".csv"))
              .sorted()
              .findFirst();
    } catch (IOException failure) {
      throw new UnreadableInput(
          folder + " could not be read: " + FileTrouble.reason(failure), failure);
    } catch (UncheckedIOException failure) {
      throw new UnreadableInput(
          folder + " could not be read: " + FileTrouble.reason(failure.getCause()), failure);
    }
    if (found.isPresent()) {
      throw new UnreadableInput(
          folder + " could not be read: the name of the file \"" + found.get() + "\" " + why());
    }
  }

  private static boolean isThere(String folder) {
    try {
      return Files.isDirectory(Path.of(folder));
    } catch (InvalidPathException cannotBeNamed) {
      return false;
    }
  }

  private static String why() {
    String encoding = System.getProperty("sun.jnu.encoding", "");
    return encoding.toUpperCase(Locale.ROOT).startsWith("UTF")
        ? "is not in " + encoding + "; rename it"
        : "holds characters that cannot be read under this locale ("
            + encoding
            + "); run again with LC_ALL=C.UTF-8";
  }
}
