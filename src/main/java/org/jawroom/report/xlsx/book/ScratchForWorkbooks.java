package org.jawroom.report.xlsx.book;

import java.io.File;
import java.io.IOException;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;
import org.jawroom.publish.Scratch;

/** Puts the workbook library's temporary files into this run's scratch folder. */
final class ScratchForWorkbooks implements TempFileCreationStrategy {
  private ScratchForWorkbooks() {}

  /** Must be called before the library creates any file. */
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
