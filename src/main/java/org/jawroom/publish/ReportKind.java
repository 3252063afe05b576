package org.jawroom.publish;

import java.io.IOException;
import java.nio.file.Path;

/**
 * One kind of report: a file is replaced only by one of the same kind. It is recognised by what it
 * holds, whichever version wrote it, not by a list of what was written.
 */
@FunctionalInterface
public interface ReportKind {

  /** Replaces nothing but empty files. */
  ReportKind NONE = file -> false;

  /**
   * Whether {@code file}, an ordinary one, is of this kind.
   *
   * @throws IOException if it cannot be read
   */
  boolean includes(Path file) throws IOException;
}
