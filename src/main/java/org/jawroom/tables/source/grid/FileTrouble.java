package org.jawroom.tables.source.grid;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.Locale;

/** Words the reason of an I/O failure so that it can follow the file's name. */
public final class FileTrouble {
  private FileTrouble() {}

  /**
   * The reason without the file's name: the message of a {@link FileSystemException} contains the
   * name, and for some subclasses nothing else.
   */
  public static String reason(IOException failure) {
    if (failure instanceof FileSystemException file) {
      return file.getReason() == null ? kind(file) : file.getReason();
    }
    return failure.getMessage() == null ? "no reason is given" : failure.getMessage();
  }

  /** {@code AccessDeniedException} and similar classes express their reason only by their name. */
  private static String kind(FileSystemException failure) {
    String name = failure.getClass().getSimpleName().replaceFirst("Exception$", "");
    return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }
}
