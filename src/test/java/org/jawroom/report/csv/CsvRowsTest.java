package org.jawroom.report.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.Rounding;
import org.junit.jupiter.api.Test;

/** Rows written for speed, against the same rows by the library. */
class CsvRowsTest {
  private static final String SIGNS = "ab 1-+=@#!\"$,;.:\t\r\n'~\u007f\u0080\u00e4\u4e16\u0001";

  @Test
  void text_ofAnyKind_isAsTheLibraryWritesIt() throws IOException {
    int quoted = 0;
    for (long seed = 0; seed < 3000; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<List<String>> rows = new ArrayList<>();
      for (int row = random.nextInt(1, 4); row > 0; row--) {
        List<String> cells = new ArrayList<>();
        for (int cell = random.nextInt(1, 5); cell > 0; cell--) {
          cells.add(text(random));
        }
        rows.add(cells);
      }
      String expected = library(rows);
      assertEquals(expected, ours(rows), "seed " + seed);
      quoted += expected.contains("\"") ? 1 : 0;
    }
    assertTrue(quoted > 1000, quoted + " with quotes");
  }

  @Test
  void everySign_aloneAtEitherEndAndWithin_isAsTheLibraryWritesIt() throws IOException {
    for (char c = 0; c < 0x180; c++) {
      for (String text : List.of("" + c, c + "a", "a" + c, "a" + c + "a")) {
        List<List<String>> rows = List.of(List.of(text, text), List.of("b", text));
        assertEquals(library(rows), ours(rows), "U+" + Integer.toHexString(c));
      }
    }
  }

  @Test
  void length_ofAnySize_isTheExactDecimal() {
    SplittableRandom random = new SplittableRandom(1);
    for (int i = 0; i < 20_000; i++) {
      long length = random.nextLong(-1L << random.nextInt(1, 60), 1L << random.nextInt(1, 60));
      for (Rounding rounding : Rounding.values()) {
        CsvRows rows = new CsvRows(1);
        rows.length(length, rounding);
        rows.length(OptionalLong.of(-length), rounding);
        assertEquals(
            Figures.millimetres(length, rounding) + "," + Figures.millimetres(-length, rounding),
            text(rows));
      }
    }
  }

  /** Below, at and above a step of 0.001, on either side of 0. */
  @Test
  void kilograms_ofAnySize_areTheExactDecimal() {
    for (String mass : List.of("0", "0.0009", "0.001", "12.3456", "500000", "1e3", "0.7501")) {
      for (BigDecimal one : List.of(new BigDecimal(mass), new BigDecimal(mass).negate())) {
        CsvRows rows = new CsvRows(1);
        rows.kilograms(Optional.of(one));
        rows.kilograms(Optional.empty());
        rows.kilograms(Optional.of(one));
        String text = Figures.kilograms(one);
        assertEquals(text + ",," + text, text(rows));
      }
    }
  }

  private static String text(SplittableRandom random) {
    StringBuilder text = new StringBuilder();
    for (int i = random.nextInt(5); i > 0; i--) {
      text.append(SIGNS.charAt(random.nextInt(SIGNS.length())));
    }
    return text.toString();
  }

  private static String ours(List<List<String>> rows) {
    CsvRows ours = new CsvRows(1);
    for (List<String> row : rows) {
      row.forEach(ours::text);
      ours.end();
    }
    return text(ours);
  }

  private static String library(List<List<String>> rows) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CsvReport table = new CsvReport(out);
    for (List<String> row : rows) {
      table.row(row);
    }
    table.finish();
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String text(CsvRows rows) {
    return new String(rows.bytes(), StandardCharsets.UTF_8);
  }
}
