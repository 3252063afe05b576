package org.jawroom.publish;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * The output of a run: a folder and, in listing order, the names of the files in it, each with the
 * kind of report that it may replace.
 */
public record Destination(Path folder, Map<String, ReportKind> files) {

  /** One file in its folder. */
  public static Destination file(Path file, ReportKind kind) {
    Path whole = file.toAbsolutePath();
    return new Destination(whole.getParent(), Map.of(whole.getFileName().toString(), kind));
  }

  /** The paths of the files, existing or not. */
  public List<Path> paths() {
    return files.keySet().stream().map(folder::resolve).toList();
  }

  /**
   * Checks that nothing would be lost and everything can be written. {@link AtomicFiles} checks
   * again; a long run checks before it starts.
   *
   * @throws FileSystemException with a reason that says what to do
   * @throws IOException if an existing file cannot be read
   */
  public void check() throws IOException {
    checkFolder();
    for (String name : files.keySet()) {
      check(name);
    }
  }

  /** Whether a report of the kind of {@code name} exists there. */
  public boolean holds(String name) throws IOException {
    Path file = folder.resolve(name);
    return Files.isRegularFile(file) && files.get(name).includes(file);
  }

  void checkFolder() throws FileSystemException {
    Path there = folder;
    while (there != null && !Files.exists(there, LinkOption.NOFOLLOW_LINKS)) {
      there = there.getParent();
    }
    if (there != null && !Files.isDirectory(there)) {
      String what = Files.exists(there) ? "it is no folder" : "it is a link to nowhere";
      throw new FileSystemException(there.toString(), null, what + "; name a folder");
    }
  }

  /** Follows links; a dangling link is replaced. An empty file has nothing to lose. */
  void check(String name) throws IOException {
    Path file = folder.resolve(name);
    if (!Files.exists(file)) {
      return;
    }
    String reason =
        Files.isDirectory(file)
            ? "it is a folder"
            : !Files.isRegularFile(file)
                ? "it is a device or a pipe"
                : Files.size(file) > 0 && !files.get(name).includes(file)
                    ? "there is a file of that name that is no such report of jawroom"
                    : "";
    if (!reason.isEmpty()) {
      throw new FileSystemException(
          file.toString(), null, reason + "; move it away, or name another place");
    }
  }
}
