package org.jawroom.report.xlsx;

import java.io.File;
import java.io.IOException;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;
import org.jawroom.publish.Scratch;

/** The workbook library's temporary files, in the folder of this run. */
final class ScratchForWorkbooks implements TempFileCreationStrategy {
  private ScratchForWorkbooks() {}

  /** Must be called before the library makes any. */
  static void use() {
    TempFile.setTempFileCreationStrategy(new ScratchForWorkbooks());
  }

  @Override
  public File createTempFile(String prefix, String suffix) throws IOException {
    return Scratch.file(prefix, suffix).toFile();
  }

  @Override
  public File createTempDirectory(String prefix) throws IOException {
    return Scratch.directory(prefix).toFile();
  }
}
