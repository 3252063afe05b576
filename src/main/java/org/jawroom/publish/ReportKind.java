package org.jawroom.publish;

import java.io.IOException;
import java.nio.file.Path;

/**
 * A kind of report: a file may only be replaced by one of the same kind. The content identifies it,
 * whichever version wrote it; there is no record of files written.
 */
@FunctionalInterface
public interface ReportKind {

  /** Matches no file, so that only an empty file may be replaced. */
  ReportKind NONE = file -> false;

  /**
   * Whether the regular file {@code file} is of this kind.
   *
   * @throws IOException if it cannot be read
   */
  boolean includes(Path file) throws IOException;
}
