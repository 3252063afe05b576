package org.jawroom.tables.source;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.Locale;

/** Puts what Java says of a file into words that can follow the file's name. */
public final class FileTrouble {
  private FileTrouble() {}

  /**
   * Why a file could not be read or written, without its name: the message of a {@link
   * FileSystemException} holds it, and of some kinds is nothing else.
   */
  public static String reason(IOException failure) {
    if (failure instanceof FileSystemException file) {
      return file.getReason() == null ? kind(file) : file.getReason();
    }
    return failure.getMessage() == null ? "no reason is given" : failure.getMessage();
  }

  /** {@code AccessDeniedException} and the like carry their reason in their name only. */
  private static String kind(FileSystemException failure) {
    String name = failure.getClass().getSimpleName().replaceFirst("Exception$", "");
    return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
  }
}
