package org.jawroom.tables.cell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.jawroom.geometry.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthsTest {

  /**
   * The decimal sign may be an option, and no option may change what a table means: with the other
   * sign a text is refused, or it is the same length.
   */
  @Test
  void parse_otherDecimalSign_isNeverAnotherLength() {
    String letters = "0123 .,,..;/-";
    Random random = new Random(20);
    int both = 0;
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = 1 + random.nextInt(9); length > 0; length--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      OptionalLong point = read(text + " in", false);
      OptionalLong comma = read(text + " in", true);
      if (point.isPresent() && comma.isPresent()) {
        assertEquals(point, comma, text.toString());
        both++;
      }
    }
    assertTrue(both > 1000, "only " + both);
  }

  /** What is read without the patterns, against the patterns, which a space before it asks for. */
  @Test
  void parse_numberAsMostCellsHoldIt_isWhatThePatternsMakeOfIt() {
    String letters = "0123456789..--,/e ";
    Random random = new Random(22);
    int bare = 0;
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(11); length > 0; length--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      for (boolean comma : new boolean[] {false, true}) {
        assertEquals(outcome(" " + text, comma), outcome(text.toString(), comma));
      }
      if (Numerals.isBare(text.toString())) {
        assertFalse(LengthRange.isRange(" " + text), text.toString());
        assertEquals(Optional.empty(), LengthRange.hyphenated(" " + text));
        bare++;
      }
    }
    assertTrue(bare > 10_000, "only " + bare);
  }

  @Test
  void isBare_atItsLimits_isAsSaid() {
    for (String bare : List.of("0", "-1", "1.5", "-0.25", "12345678901234567890")) {
      assertTrue(Numerals.isBare(bare), bare);
    }
    for (String other :
        List.of(
            "",
            "-",
            ".",
            ".5",
            "5.",
            "-.5",
            "1.2.3",
            "--1",
            "+1",
            "1,5",
            "1 ",
            " 1",
            "\u0661",
            "123456789012345678901")) {
      assertFalse(Numerals.isBare(other), other);
    }
  }

  private static String outcome(String text, boolean comma) {
    try {
      return Lengths.parse(text, Unit.CM, comma).toString();
    } catch (BadCell refused) {
      return refused.getMessage();
    }
  }

  private static OptionalLong read(String text, boolean comma) {
    try {
      return OptionalLong.of(Lengths.parse(text, Unit.MM, comma).value());
    } catch (BadCell refused) {
      return OptionalLong.empty();
    }
  }

  /** Nanometres by hand: the inch is 25.4 mm exactly (ISO 31, NIST SP 811 B.8). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "165 | 165000000",
        "165 mm | 165000000",
        "165mm | 165000000",
        "165MM | 165000000",
        "16.5cm | 165000000",
        "0.165 m | 165000000",
        "6.5in | 165100000",
        "6.5 inch | 165100000",
        "6.5 inches | 165100000",
        "6.5 in. | 165100000",
        "6 1/2\" | 165100000",
        "6 1/2\u2033 | 165100000",
        "6 1/2\u201d | 165100000",
        "6 1/2\u201c | 165100000",
        "6-1/2 in | 165100000",
        "6\u20131/2 in | 165100000",
        "-6-1/2 in | -165100000",
        "-6 1/2 in | -165100000",
        "1/4 in | 6350000",
        "1 / 4 in | 6350000",
        "60/64 in | 23812500",
        "63/64\" | 25003125",
        "1-7/8in | 47625000",
        "1/64 in | 396875",
        "0.0001 in | 2540",
        ".5 | 500000",
        "5. | 5000000",
        "+5 | 5000000",
        "0 | 0",
        "-0 | 0",
        "\u22125 | -5000000",
        "\u20135 | -5000000",
        "\u20105 | -5000000",
        "\u20115 | -5000000",
        "\ufe635 | -5000000",
        "\uff0d5 | -5000000",
        "'\u00a0165\u202fmm\u2009' | 165000000",
        "'\t165\u2009mm ' | 165000000",
        "'6\u00a01/2\u202fin' | 165100000",
        "100 m | 100000000000",
        "-100 m | -100000000000",
      })
  void parse_wellWritten_isExact(String text, long nanometres) throws BadCell {
    assertEquals(nanometres * Length.NANOMETRE, Lengths.parse(text, Unit.MM, false).value());
  }

  /** Halves go toward +infinity, below 0 too. */
  @ParameterizedTest
  @CsvSource({
    "0.0000005, 1",
    "0.00000049999, 0",
    "-0.0000005, 0",
    "-0.00000050001, -1",
    "-0.0000015, -1",
  })
  void parse_betweenNanometres_roundsHalvesUp(String text, long nanometres) throws BadCell {
    assertEquals(nanometres * Length.NANOMETRE, Lengths.parse(text, Unit.MM, false).value());
  }

  @Test
  void parse_randomFractions_agreesWithDecimalArithmetic() throws BadCell {
    Random random = new Random(20260104);
    for (int i = 0; i < 2000; i++) {
      long whole = random.nextInt(200);
      long under = 2L << random.nextInt(6);
      long over = (long) (random.nextDouble() * under);
      String text = whole + " " + over + "/" + under + " in";
      // Binary fractions have a finite expansion, so a BigDecimal holds them exactly.
      BigDecimal nanometres =
          new BigDecimal(BigInteger.valueOf(whole * under + over))
              .divide(BigDecimal.valueOf(under))
              .multiply(BigDecimal.valueOf(25_400_000));
      long expected = nanometres.setScale(0, java.math.RoundingMode.HALF_UP).longValueExact();
      assertEquals(2 * expected, Lengths.parse(text, Unit.MM, false).value(), text);
    }
  }

  @Test
  void parse_bareNumber_takesTheUnitGiven() throws BadCell {
    assertEquals(
        new Lengths.Read(Length.INCH / 4, true, "1/4", Unit.IN),
        Lengths.parse("1/4", Unit.IN, false));
    assertEquals(
        new Lengths.Read(-Length.MM / 4, false, "-0.25", Unit.MM),
        Lengths.parse("-0.25mm", Unit.IN, false));
    assertEquals(20 * Length.MM, Lengths.parse("2", Unit.CM, false).value());
    assertEquals(2000 * Length.MM, Lengths.parse("2", Unit.M, false).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,25 | 1250000",
        "1,250 | 1250000",
        "-0,5 mm | -500000",
        "1250 | 1250000000",
        "6 1/2 in | 165100000",
        "6,5in | 165100000",
      })
  void parse_decimalComma_readsCommas(String text, long nanometres) throws BadCell {
    assertEquals(nanometres * Length.NANOMETRE, Lengths.parse(text, Unit.MM, true).value());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.250 | could be 1,25 or 1250; write 1250 or 1,25",
        "1.25 | has a decimal point, but the setting decimal says comma; write 1,25",
        "0.875 in | has a decimal point, but the setting decimal says comma; write 0,875 in",
        "1.250 in | could be 1,25 or 1250; write 1250 in or 1,25 in",
        "1.250,5 | has thousands separators; write 1250,5",
      })
  void parse_pointUnderDecimalComma_isRefused(String text, String message) {
    assertEquals(message, refusal(text, true));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1,250 | could be 1.25 or 1250; write 1250 or 1.25",
        "-1,250 mm | could be -1.25 or -1250; write -1250 mm or -1.25 mm",
        "100,000 | could be 100 or 100000; write 100000 or 100",
        "1,25 | has a decimal comma; write 1.25, or set the setting decimal to comma",
        "0,125 | has a decimal comma; write 0.125, or set the setting decimal to comma",
        "1,250.5 | has thousands separators; write 1250.5",
        "1,250,000 | has thousands separators; write 1250000",
        "1.250,5 | has points and commas mixed; write digits and at most one .",
        "1,5 in | has a decimal comma; write 1.5 in, or set the setting decimal to comma",
        "1,250.5 mm | has thousands separators; write 1250.5 mm",
        "1 250 | has spaces between its digits; if it is one number, write 1250; of two readings, the one that leaves less room",
        "95 100 mm | has spaces between its digits; if it is one number, write 95100 mm; of two readings, the one that leaves less room",
        "1e3 | has an exponent; write it out",
        "1E-3 | has an exponent; write it out",
        "1/0 | divides by 0",
        "100.000001 m | is more than 100 m",
        "-100001 | is more than 100 m",
        "3937.1 in | is more than 100 m",
        "5 ft | has a unit that is not known; write mm, cm, m or in",
        "5' | has a unit that is not known; write mm, cm, m or in",
        "none | is not allowed here; leave the cell blank if it is not known",
        "? | is no number; leave the cell blank if it is not known",
        "\u2013 | is no number; leave the cell blank if it is not known",
      })
  void parse_doubtful_isRefusedWithWhatWouldBeRight(String text, String message) {
    assertEquals(message, refusal(text, false));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "abc",
        "NaN",
        "Infinity",
        "-Infinity",
        "--5",
        "+-5",
        "6 - 1/2",
        "6.5 1/2",
        "mm",
        "5 5",
        "1..5",
        "0x10",
        "5-",
        "\u0661",
        "\uff15",
        "1/4/",
        "1'250",
        "\u00bd",
        "5 mm 3",
        "/4",
        "1e3 mm"
      })
  void parse_noLength_isRefused(String text) {
    assertEquals(
        "is not a length; write a number, with a unit if you like, as 165, 165 mm, 6.5in or 6 1/2\"",
        refusal(text, false),
        text);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "4-Jan",
        "Jan-4",
        "04. Jan",
        "4-Jan-2026",
        "2026-01-04",
        "01/04/2026",
        "4.1.2026",
        "Jan 4, 2026",
        "2026-01-04 00:00:00",
        "2026-01-04T00:00"
      })
  void parse_date_isRefused(String text) {
    assertEquals(
        "is a date, as spreadsheets make of fractions; for 1/4 in type 0.25 in",
        refusal(text, false));
  }

  /** What spreadsheets show for a fraction, day or month first. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2-Jan | 1/2 | 0.5",
        "01-Feb | 1/2 | 0.5",
        "01. Feb | 1/2 | 0.5",
        "01.02. | 1/2 | 0.5",
        "2024-01-02 | 1/2 | 0.5",
        "02.01.2024 | 1/2 | 0.5",
        "1/2/2024 | 1/2 | 0.5",
        "2024/2/1 | 1/2 | 0.5",
        "16-May | 5/16 | 0.3125",
        "8-Mrz | 3/8 | 0.375",
        "4-M\u00e4r | 3/4 | 0.75",
        "Jan-32 | 1/32 | 0.03125",
        "Mar-64 | 3/64 | 0.046875",
        "2. Dez 2026 | 2/12 | ",
        "7-Aug | 7/8 | 0.875",
      })
  void parse_dateThatWasAFraction_saysWhich(String text, String fraction, String decimal) {
    assertEquals(
        decimal == null
            ? DateText.MESSAGE
            : "is a date, as spreadsheets make of fractions; for "
                + fraction
                + " in type "
                + decimal
                + " in",
        refusal(text, false));
  }

  @ParameterizedTest
  @ValueSource(strings = {"4-Apr", "31/12/2025", "2024-01", "01/2024", "Jan 2026", "Jan-7"})
  void parse_otherDate_isRefused(String text) {
    assertEquals(DateText.MESSAGE, refusal(text, false));
  }

  @Test
  void parse_dateUnderDecimalComma_saysWhatToTypeWithAComma() {
    assertEquals(
        "is a date, as spreadsheets make of fractions; for 1/2 in type 0,5 in",
        refusal("2-Jan", true));
  }

  private static final String DIVISIONS = ". A fraction of an inch has 2, 4, 8, 16, 32 or 64 there";

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "48/50 | has a slash: two readings? write one, the one that leaves less room" + DIVISIONS,
        "93/95 mm | has a slash: two readings? write one, the one that leaves less room"
            + DIVISIONS,
        "1/3 in | has a slash: two readings? write one, the one that leaves less room" + DIVISIONS,
        "48.5/50 | has a slash: two readings? write one, the one that leaves less room",
        "48/50/51 mm | has a slash: two readings? write one, the one that leaves less room",
        "1/2/3 | has a slash: two readings? write one, the one that leaves less room",
        "60/64 | has a slash: two readings? write one, the one that leaves less room. A fraction of an"
            + " inch has an inch mark here",
        "6 1/3 in | has 3 below its slash; write a decimal number" + DIVISIONS,
        "1 3/10 in | has 10 below its slash; write a decimal number" + DIVISIONS,
        "1/128 in | has a slash: two readings? write one, the one that leaves less room"
            + DIVISIONS,
        "5/4 in | is 1 or more; write 1 1/4 in, or of two readings the one that leaves less room",
        "5/4 | is 1 or more; write 1 1/4 in, or of two readings the one that leaves less room",
        "-60/32 in | is 1 or more; write -1 7/8 in, or of two readings the one that leaves less room",
        "64/64 in | is 1 or more; write 1 in, or of two readings the one that leaves less room",
        "6 5/4 in | has a fraction of 1 or more behind its whole number; write 7 1/4 in",
        "1 7/8 | is a fraction, which only inches have; write 1 7/8 in, or 1.875 mm",
        "-1-7/8 mm | is a fraction, which only inches have; write -1-7/8 in, or -1.875 mm",
        "1/4 | is a fraction, which only inches have; write 1/4 in, or 0.25 mm",
        "3/4 cm | is a fraction, which only inches have; write 3/4 in, or 0.75 cm",
        "1/2 m | is a fraction, which only inches have; write 1/2 in, or 0.5 m",
      })
  void parse_noFractionOfAnInch_isRefusedWithWhatToWrite(String text, String message) {
    assertEquals(message, refusal(text, false));
  }

  @Test
  void parse_fractionInAMillimetreRowUnderDecimalComma_isWrittenWithAComma() {
    assertEquals(
        "is a fraction, which only inches have; write 1 7/8 in, or 1,875 mm",
        refusal("1 7/8", true));
  }

  @Test
  void parse_hostilelyLong_isRefusedAtOnce() {
    assertEquals("is too long for a number", refusal("1".repeat(30_000), false));
    assertTrue(refusal("1 ".repeat(49), false).startsWith("is not a length"));
  }

  @ParameterizedTest
  @CsvSource({"12700000, 6.35 mm", "0, 0 mm", "-1, -0.0000005 mm", "200000000000, 100000 mm"})
  void inMillimetres_isExact(long halfNanometres, String text) {
    assertEquals(text, Lengths.inMillimetres(halfNanometres));
  }

  private static String refusal(String text, boolean comma) {
    return assertThrows(BadCell.class, () -> Lengths.parse(text, Unit.MM, comma), text)
        .getMessage();
  }
}
