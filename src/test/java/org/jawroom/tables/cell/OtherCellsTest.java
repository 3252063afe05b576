package org.jawroom.tables.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.cell.name.NearestName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OtherCellsTest {

  /** The pound is 0.45359237 kg exactly (NIST SP 811 B.8). */
  @ParameterizedTest
  @CsvSource({
    "32, 32",
    "32 kg, 32",
    "32kg, 32",
    "0, 0",
    "75 lb, 34.01942775",
    "75lbs, 34.01942775",
    "0.5 LB, 0.226796185"
  })
  void mass_wellWritten_isExact(String text, BigDecimal kg) throws BadCell {
    assertEquals(0, kg.compareTo(Masses.parse(text, false)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "5 g | has a unit that is not known; write kg or lb",
        "-5 kg | is below 0",
        "1,250 kg | could be 1.25 or 1250; write 1250 kg or 1.25 kg",
        "2,5 lb | has a decimal comma; write 2.5 lb, or set the setting decimal to comma",
        "kg | is not a mass; write a number, with kg or lb if you like, as 32 or 75 lb",
        "1/2 lb | is not a mass; write a number, with kg or lb if you like, as 32 or 75 lb",
        "none | is not allowed here; leave the cell blank if it is not known",
      })
  void mass_doubtful_isRefused(String text, String message) {
    assertEquals(message, message(() -> Masses.parse(text, false)));
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "3, 3", "3.0, 3", "2147483647, 2147483647"})
  void count_whole_isRead(String text, int count) throws BadCell {
    assertEquals(count, Numerals.count(text, false));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.5 | is not a whole number",
        "-1 | is below 0",
        "three | is not a whole number; write digits alone, as 3",
        "3 mm | is not a whole number; write digits alone, as 3",
        "2147483648 | is too large",
        "3-Jan | is a date, as spreadsheets make of fractions; type 0.25, or '1/4 to keep it as"
            + " text",
      })
  void count_doubtful_isRefused(String text, String message) {
    assertEquals(message, message(() -> Numerals.count(text, false)));
  }

  @Test
  void number_withUnit_isRefused() {
    assertEquals(
        "is not a number; write digits alone, as 25 or 12.5",
        message(() -> Numerals.number("25 kN", false)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "vise",
        " six inch ",
        "\u5927\u864e\u94b3",
        "\u0645\u0644\u0632\u0645\u0629",
        "6\" vise",
        "6\" - old",
        "a=b",
        "\u0915\u094d\u200d\u0937",
        "\u2699\ufe0f",
        "CON",
        "../mill",
        "C:\\mill",
        "mill."
      })
  void name_ofAnyScript_isTrimmed(String text) throws BadCell {
    assertEquals(text.strip(), Names.parse(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+a",
        "-a",
        "@a",
        "\uff1da",
        "\uff0ba",
        "\uff0da",
        "\uff20a",
        " =a",
        "\"=a",
        "' @a",
        "a; b",
        "mill;",
        "a;=1",
        "a; \"+1",
        "a;\uff0d1",
        "a\u00adb",
        "a\u200bb",
        "a\u200db",
        "\u200da",
        "a\ufe0fb",
        "a\u034fb",
        "a\u3164b",
        "\u2800",
        "a\ufeffb",
        "a\uffffb",
        "a\udb40\udc41b",
        "a\u0301\u0302\u0303\u0304\u0305",
        "a\u009bb",
        "a\tb",
        "a\nb",
        "a\rb",
        "a\t",
        "\ta",
        "a\u202eb",
        "a\u200eb",
        "a\u2066b",
        "a\u0000b",
        "a\u001bb",
        "a\u2028b",
        "\ufeffa",
        "\ud800",
        "none"
      })
  void name_thatMightMislead_isRefused(String text) {
    assertThrows(BadCell.class, () -> Names.parse(text));
  }

  @Test
  void name_longerThanHundredCodePoints_isRefused() throws BadCell {
    String hundred = "\ud83d\udd27".repeat(100);
    assertEquals(hundred, Names.parse(hundred));
    assertEquals("is longer than 100 characters", message(() -> Names.parse(hundred + "a")));
  }

  @Test
  void key_caseSpacesAndAccentCoding_doNotCount() {
    assertEquals(Names.key("Caf\u00e9  Mill"), Names.key(" cafe\u0301\u00a0mill"));
    assertEquals(Names.key("\u0915\u094d\u200d\u0937"), Names.key("\u0915\u094d\u0937"));
    assertNotEquals(Names.key("mill 1"), Names.key("mill 2"));
  }

  @Test
  void nearest_fewLettersOff_isFound() {
    List<String> known = List.of("rear_gap", "left_gap", "nose_min");
    assertEquals(Optional.of("rear_gap"), NearestName.to("rer_gap", known));
    assertEquals(Optional.of("rear_gap"), NearestName.to("REAR GAP", known));
    assertEquals(Optional.empty(), NearestName.to("zzzz", known));
    assertEquals("; did you mean \"nose_min\"?", NearestName.hint("nosemin", known));
  }

  @Test
  void nearest_sameWordsOrBeginning_isFound() {
    List<String> known =
        List.of("VX 50", "VX 40 (used, plates)", "VX 40 (used)", "mill", "Fräse Nord");
    assertEquals(Optional.of("VX 40 (used)"), NearestName.to("VX 40", known));
    assertEquals(Optional.of("VX 40 (used)"), NearestName.to("vx-40", known));
    assertEquals(Optional.of("mill"), NearestName.to("the old mill in the yard", known));
    assertEquals(Optional.of("Fräse Nord"), NearestName.to("NORD", known));
    assertEquals(Optional.of("Fräse Nord"), NearestName.to("fr", known));
    assertEquals(Optional.of("VX 50"), NearestName.to("VX 5", known));
    for (String none : List.of("", "?", "f", "40 VX of the night shift")) {
      assertEquals(Optional.empty(), NearestName.to(none, known), none);
    }
  }

  private static String message(org.junit.jupiter.api.function.Executable reading) {
    return assertThrows(BadCell.class, reading).getMessage();
  }
}
