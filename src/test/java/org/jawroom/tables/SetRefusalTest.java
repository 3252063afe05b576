package org.jawroom.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.jawroom.shop.ViseSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rows of {@code sets}: every refusal with its whole line, and what rows of one name come to. */
class SetRefusalTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "vise | vice | is no vise of this shop; did you mean \"vise\"?",
        "count | 0 | is none; write 1 or more, or take the row out",
        "count | 9 | makes 9 vises in this set; at most 8 are tried on one table",
        "machines | mil | is no machine of this shop; did you mean \"mill\"?",
        "machines | ; | names no machine; leave it blank for all",
      })
  void cell_isRefused(String column, String text, String message) throws Exception {
    assertEquals(
        List.of("sets.csv row 2, column " + column + ": \"" + text + "\" " + message),
        TestShop.sound(folder).set(column, text).faults());
  }

  @Test
  void count_belowAtAndAboveEight_isReadReadAndRefused() throws Exception {
    for (int second : new int[] {4, 5, 6}) {
      List<String> faults =
          TestShop.sound(folder)
              .vise("wide")
              .set("count", "3")
              .set("vise", "wide", "count", String.valueOf(second))
              .faults();
      assertEquals(
          second < 6
              ? List.of()
              : List.of(
                  "sets.csv row 3, column count: \"6\" makes 9 vises in this set; at most 8 are"
                      + " tried on one table"),
          faults);
    }
  }

  @Test
  void vise_twiceInASet_isRefused() throws Exception {
    assertEquals(
        List.of(
            "sets.csv row 3, column vise: \"VISE\" is already in this set in row 2; write how many"
                + " there, as count"),
        TestShop.sound(folder).set().set("vise", "VISE").faults());
  }

  @Test
  void machines_thatDifferWithinASet_areRefused() throws Exception {
    assertEquals(
        List.of(
            "sets.csv row 3, column machines: \"other\" differs from row 2 of this set; write them"
                + " in one row of the set"),
        TestShop.sound(folder)
            .machine("other")
            .vise("wide")
            .set("machines", "mill")
            .set("vise", "wide", "machines", "other")
            .faults());
  }

  @Test
  void report_ofSets_isNotTheirTable() throws Exception {
    assertEquals(
        List.of("sets.csv: is the report of sets, not the table of them; take it away"),
        TestShop.sound(folder).set("least_mm", "4").faults());
  }

  @Test
  void rowsOfOneName_areOneSet_whateverTheCase() throws Exception {
    List<ViseSet> sets =
        TestShop.sound(folder)
            .vise("wide")
            .set("count", "2", "machines", "MILL")
            .set("set", "other")
            .set("set", "PAIR", "vise", "wide")
            .read()
            .shop()
            .orElseThrow()
            .sets();
    assertEquals(List.of("pair", "other"), sets.stream().map(ViseSet::name).toList());
    assertEquals(
        List.of("vise 2", "wide 1"),
        sets.get(0).members().stream()
            .map(member -> member.vise().name() + " " + member.count())
            .toList());
    assertEquals(List.of("mill"), sets.get(0).machines());
    assertEquals(List.of(), sets.get(1).machines());
  }
}
