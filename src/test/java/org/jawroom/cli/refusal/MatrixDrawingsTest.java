package org.jawroom.cli.refusal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Drawings that cannot be are refused, not left out without a word. */
class MatrixDrawingsTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-o - --drawings | leave out -o -.",
        "-o DIR --no-workbook --drawings 3 | leave out --no-workbook."
      })
  void drawings_withoutAWorkbook_isWrongUse(String options, String advice) {
    StringWriter err = new StringWriter();
    String line = "matrix inputs/demo " + options.replace("DIR", folder.resolve("out").toString());
    String[] args = line.split(" ");
    assertEquals(
        2, Main.run(args, new PrintWriter(new StringWriter()), new PrintWriter(err, true)));
    assertEquals(
        "--drawings are in the workbook, which this run does not write; " + advice,
        err.toString().lines().findFirst().orElseThrow());
    assertFalse(Files.exists(folder.resolve("out")));
  }
}
