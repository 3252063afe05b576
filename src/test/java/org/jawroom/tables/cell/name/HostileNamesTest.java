package org.jawroom.tables.cell.name;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import org.jawroom.fixture.TestShop;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names that look like others, and texts that hold what nobody sees. */
class HostileNamesTest {
  private static final String CAFE = "caf\u00e9 mill";

  @TempDir private Path folder;

  /** Two names that look alike to people are one name; see Unicode Standard Annex 15. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "cafe\u0301 mill",
        "caf\u00e9\u00a0mill",
        "caf\u00e9  mill",
        "CAF\u00c9 MILL",
        "caf\u00e9\u200d mill"
      })
  void name_thatLooksLikeAnother_isThere_twice(String other) throws UnreadableInput {
    List<String> faults = TestShop.sound(folder).machine(CAFE).machine(other).faults();
    assertEquals(1, faults.size(), faults.toString());
    assertTrue(
        faults.get(0).endsWith("is already the name of row 3 (case does not count)"),
        faults.get(0));
  }

  @Test
  void name_ofAnOwner_isFoundHoweverItsAccentsAreCoded() throws UnreadableInput {
    String apart = Normalizer.normalize(CAFE, Normalizer.Form.NFD);
    TestShop shop =
        TestShop.sound(folder).machine(CAFE).guard(apart, "sill", "side", "front", "gap", "40");
    assertEquals(1, shop.read().shop().orElseThrow().machines().get(1).guardRows().size());
  }

  /** Overrides and isolates (Unicode Standard Annex 9), tags, NUL, halves of characters. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u202a",
        "\u202b",
        "\u202c",
        "\u202d",
        "\u202e",
        "\u2066",
        "\u2067",
        "\u2068",
        "\u2069",
        "\u061c",
        "\u200b",
        "\u00ad",
        "\udb40\udc41",
        "\u0007",
        "\u001b",
        "\u0085",
        "\uffff"
      })
  void freeText_thatHoldsUnseenCharacters_isAFaultOfItsCell(String unseen) throws UnreadableInput {
    String code = String.format("(U+%04X)", unseen.codePointAt(0));
    for (String column : List.of("description", "measured", "looked_for")) {
      List<String> faults =
          TestShop.in(folder).machine("mill", column, "a" + unseen + "b").vise("vise").faults();
      assertEquals(1, faults.size(), faults.toString());
      assertTrue(
          faults.get(0).startsWith("machines.csv row 2, column " + column)
              && faults.get(0).contains(code),
          faults.get(0));
      assertTrue(faults.get(0).chars().noneMatch(one -> one == unseen.charAt(0)), faults.get(0));
    }
  }

  @Test
  void freeText_ofSeveralLinesAndScripts_isTakenAsItStands() throws UnreadableInput {
    String text =
        "first line\nsecond\tline, \u05de\u05db\u05d5\u05e0\u05d4, -3 \u00b0, \u2699\ufe0f";
    assertEquals(
        text,
        TestShop.in(folder)
            .machine("mill", "description", text)
            .vise("vise")
            .read()
            .shop()
            .orElseThrow()
            .machines()
            .get(0)
            .description());
  }

  /** Lists of names are parted at semicolons, in the tables and in what comes out. */
  @Test
  void name_withASemicolon_isRefusedWithWhatToWrite() throws UnreadableInput {
    String refused =
        ": \"one ; two;\" holds ;, which stands between names in a list; write one, two";
    assertEquals(
        List.of(
            "machines.csv row 3, column machine" + refused,
            "guards.csv row 2, column guard" + refused,
            "vises.csv row 3, column vise" + refused,
            "vise_parts.csv row 2, column part" + refused,
            "mounts.csv row 2, column mount" + refused,
            "jobs.csv row 2, column job" + refused),
        TestShop.sound(folder)
            .machine("one ; two;")
            .guard("mill", "one ; two;", "x_min", "0")
            .vise("one ; two;")
            .part("vise", "one ; two;")
            .mount("vise", "one ; two;")
            .job("one ; two;")
            .faults());
  }

  @ParameterizedTest
  @ValueSource(strings = {"\u00a0", "\u2007", "\u202f", "\u3000", "\u2003", " \t"})
  void words_betweenSpacesOfAnyKind_areRead(String space) throws UnreadableInput {
    assertEquals(
        List.of(),
        TestShop.in(folder)
            .machine(
                "mill",
                "unit",
                space + "mm" + space,
                "status",
                space + "candidate" + space,
                "table_moves",
                space + "xy" + space,
                "slot_direction",
                space + "x" + space,
                "rear_gap",
                space + "none" + space,
                "turns",
                space + "front" + space + "rear" + space,
                "source",
                space + "tape" + space,
                "max_load",
                space + "300" + space + "kg" + space)
            .guard("mill", "head", "kind", space + "tool" + " changer" + space, "x_min", "0")
            .vise("vise", "handle", space + "on" + space, "bolt_spacing", space + "none" + space)
            .setting("decimal", space + "point" + space)
            .setting("show", space + "in" + space)
            .option("clearance", space + "6" + space + "mm" + space)
            .faults());
  }
}
