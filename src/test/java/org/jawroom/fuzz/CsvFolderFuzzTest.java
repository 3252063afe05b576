package org.jawroom.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;

/** Folders of CSV files that hold anything. */
class CsvFolderFuzzTest {
  private static FuzzedFolder folder;

  @BeforeAll
  static void makeFolder() throws IOException {
    folder = FuzzedFolder.make();
  }

  @FuzzTest
  void read_anyFolder_givesAShopOrFaults(byte[] input) throws IOException {
    ReadAnything.read(folder.tables(input));
  }
}
