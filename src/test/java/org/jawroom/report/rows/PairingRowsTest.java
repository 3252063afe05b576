package org.jawroom.report.rows;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.mm;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.SampleShop;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.shop.value.Column;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairingRowsTest {
  private static final String HEADER =
      "machine,vise,verdict,margin_mm,best_margin_mm,limited_by,limiting_part,limiting_situation,"
          + "limiting_opening,usable_from_mm,usable_to_mm,missing";
  private static final String ROW =
      "mill A,plain,fits,1.000,2.000,door,base,cutting,any,0.000,150.000,";

  @Test
  void of_everyVerdict_agreesWithTheFile() throws Exception {
    Outcome limited =
        new Made(machine("mill A"), vise("plain"), Verdict.LIMITED)
            .best("-11.4750005")
            .limit("0.0019995", "rear cover", "screw rear", Axis.X, Situation.LOADING, JawEnd.OPEN)
            .usable("45.3", "150.07")
            .done();
    Outcome unknown =
        new Made(machine("mill, \"B\""), vise("plain"), Verdict.UNKNOWN)
            .missing(Column.REAR_GAP, Column.GUARD_GAP)
            .done();

    assertEquals(
        List.of(
            new PairingRow(
                "mill A",
                "plain",
                Verdict.LIMITED,
                OptionalLong.of(mm("0.001")),
                OptionalLong.of(mm("-11.476")),
                Optional.of(
                    new PairingRow.Limiting(
                        "rear cover", "screw rear", Situation.LOADING, JawEnd.OPEN)),
                Optional.of(new PairingRow.Usable(mm("45.3"), mm("150.07"))),
                Optional.empty(),
                List.of()),
            new PairingRow(
                "mill, \"B\"",
                "plain",
                Verdict.UNKNOWN,
                OptionalLong.empty(),
                OptionalLong.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of("machines.rear_gap", "guards.gap"))),
        of(List.of(limited, unknown)));
  }

  @Test
  void of_theSampleShop_readsEveryRow() throws Exception {
    SampleShop sample = new SampleShop();
    List<PairingRow> rows = of(sample.outcomes);
    assertEquals(
        sample.outcomes.stream().map(Outcome::verdict).toList(),
        rows.stream().map(PairingRow::verdict).toList());
  }

  @Test
  void read_columnsAddedOrInAnotherOrder_readsTheSame() throws Exception {
    List<PairingRow> plain = read(HEADER + "\r\n" + ROW + "\r\n");
    assertEquals(plain, read(HEADER + ",remedies,remedies\r\n" + ROW + ",\"raise; turn\",\r\n"));
    assertEquals(
        plain,
        read(
            HEADER.replace("machine,vise", "vise,machine")
                + "\n"
                + ROW.replace("mill A,plain", "plain,mill A")));
    assertEquals(plain, read("\ufeff" + HEADER + "\n\n" + ROW + "\n\n"));
  }

  @Test
  void read_settable_isReadWhereTheReportHasIt() throws Exception {
    assertEquals(Optional.empty(), read(HEADER + "\n" + ROW + "\n").get(0).settable());
    String with = HEADER + ",settable,bolt_thread,hand_mm\n" + ROW;
    assertEquals(Optional.of(true), read(with + ",yes,M16,\n").get(0).settable());
    assertEquals(Optional.of(false), read(with + ",no,,\n").get(0).settable());
    assertEquals(Optional.empty(), read(with + ",,,\n").get(0).settable());
    assertEquals(
        "row 2, column settable: \"maybe\" is none of yes, no", refused(with + ",maybe,,\n"));
  }

  @Test
  void read_awkward_isAVerdict() throws Exception {
    String row = ROW.replace("fits", "awkward");
    assertEquals(Verdict.AWKWARD, read(HEADER + "\n" + row + "\n").get(0).verdict());
  }

  @Test
  void read_whatWasWritten_hasTheColumnsCompared() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PairingsCsv.write(List.of(), out);
    assertEquals(List.of(), read(out.toString(UTF_8)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2.000 | 2,5 | row 2 has 13 cells, but the header has 12",
        "2.000 | two | row 2, column best_margin_mm: \"two\" is no number of millimetres",
        "2.000 | 2e3 | row 2, column best_margin_mm: \"2e3\" is no number of millimetres",
        "2.000 | NaN | row 2, column best_margin_mm: \"NaN\" is no number of millimetres",
        "2.000 | 1234567890 | row 2, column best_margin_mm: \"1234567890\" is no number of millimetres",
        "fits | good | row 2, column verdict: \"good\" is none of fits, awkward, measure, limited, no place,"
            + " no mount, unknown",
        "cutting | '' | row 2, column limiting_situation: is none of cutting, loading",
        "any | wide | row 2, column limiting_opening: \"wide\" is none of closed, open, any",
        "base | '' | row 2, column limiting_part: is blank",
        "plain | '' | row 2, column vise: is blank",
        "150.000 | '' | row 2, column usable_to_mm: is blank, but its other end is not",
        "0.000, | , | row 2, column usable_from_mm: is blank, but its other end is not",
        "plain | \"plain | it has quotes that do not pair up",
      })
  void read_cellThatCannotBeOurs_isNamedByRowAndColumn(String old, String now, String message) {
    assertEquals(message, refused(HEADER + "\n" + ROW.replaceFirst(old, now) + "\n"));
  }

  @Test
  void read_headerThatCannotBeOurs_isRefused() {
    assertEquals("it is empty", refused(""));
    assertEquals(
        "it has no column verdict", refused(HEADER.replace("verdict", "result") + "\n" + ROW));
    assertEquals(
        "it has no columns margin_mm, missing",
        refused(HEADER.replace(",margin_mm", "").replace(",missing", "")));
    assertEquals("it has the column vise twice", refused(HEADER + ",vise\n" + ROW + ",\n"));
  }

  /** As a spreadsheet saves it where people write a decimal comma: trailing zeros are gone. */
  @Test
  void read_savedBySpreadsheets_readsTheSame() throws Exception {
    List<PairingRow> plain = read(HEADER + "\r\n" + ROW.replace("1.000", "-1.250") + "\r\n");
    String saved = ROW.replace("1.000", "-1.250").replace(".000", "").replace(',', ';');
    for (String separator : List.of(";", "\t")) {
      String text =
          HEADER.replace(",", separator) + "\r\n" + saved.replace(";", separator) + "\r\n";
      assertEquals(plain, read(text));
      assertEquals(plain, read("\ufeff" + text.replace("-1.250", "-1,25")));
    }
    assertEquals(
        plain,
        read(HEADER + "\r\n" + ROW.replace("1.000", "\"-1,25\"").replace(".000", "") + "\r\n"));
  }

  /** 1,250 among points may be a thousand and more. */
  @Test
  void read_decimalPointsAndCommasInOneFile_isRefused() {
    String saved = HEADER.replace(',', ';') + "\n" + ROW.replace(',', ';') + "\n";
    assertEquals(
        "row 2, column best_margin_mm: \"2,000\" has a decimal comma, but numbers before it a"
            + " point; write all alike",
        refused(saved.replace("2.000", "2,000")));
    assertEquals(
        "row 3, column margin_mm: \"1.5\" has a decimal point, but numbers before it a comma;"
            + " write all alike",
        refused(saved.replace('.', ',') + "mill B;plain;fits;1.5;2;;;;;;;\n"));
  }

  /** What stands between quotes that do not pair up may be the rest of a large file. */
  @Test
  void read_aQuoteThatIsNotClosedInALargeFile_isRefusedEarly() throws Exception {
    String start = HEADER + "\n" + ROW.replace("plain", "\"plain") + "\n";
    byte[] row = (ROW + "\n").getBytes(UTF_8);
    long[] given = {0};
    InputStream endless =
        new SequenceInputStream(
            new ByteArrayInputStream(start.getBytes(UTF_8)),
            new InputStream() {
              @Override
              public int read() {
                return row[(int) (given[0]++ % row.length)];
              }
            });
    assertEquals(
        "it has quotes that do not pair up",
        assertThrows(
                UnreadablePairings.class, () -> PairingRows.read(endless, (pairing, number) -> {}))
            .getMessage());
    assertTrue(given[0] < 4_000_000, given[0] + " bytes");
  }

  @Test
  void read_otherEncoding_isRefused() {
    byte[] latin = (HEADER + "\n" + ROW.replace("mill A", "Fräse")).getBytes(ISO_8859_1);
    assertEquals(
        "it is not UTF-8; save it as CSV in UTF-8",
        assertThrows(
                UnreadablePairings.class,
                () -> PairingRows.read(new ByteArrayInputStream(latin), (row, number) -> {}))
            .getMessage());
  }

  private static List<PairingRow> of(List<Outcome> outcomes) throws Exception {
    List<PairingRow> rows = new ArrayList<>();
    PairingRows.of(Advised.bare(outcomes), (row, number) -> rows.add(row));
    return rows;
  }

  private static List<PairingRow> read(String text) throws UnreadablePairings, IOException {
    List<PairingRow> rows = new ArrayList<>();
    PairingRows.read(
        new ByteArrayInputStream(text.getBytes(UTF_8)), (row, number) -> rows.add(row));
    return rows;
  }

  private static String refused(String text) {
    return assertThrows(UnreadablePairings.class, () -> read(text)).getMessage();
  }
}
