package org.jawroom.report.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PairingsCsvTest {
  private static final String HEADER =
      "machine,vise,verdict,margin_mm,best_margin_mm,limited_by,limiting_part,limiting_axis,"
          + "limiting_situation,limiting_opening,required_mm,tolerance_mm,handle_to,x_mm,y_mm,mount,slots,"
          + "usable_from_mm,usable_to_mm,reach_shortfall_mm,overhang_mm,play_left_mm,play_right_mm,"
          + "play_front_mm,play_rear_mm,nose_not_below_mm,room_over_jaws_mm,load_left_kg,missing,"
          + "per_table,table_positions_mm,settable,bolt_thread,hand_mm,"
          + "margin_at_worst_mm,margin_at_best_mm,in_doubt,checked";

  private final Machine machine = machine("mill A");
  private final Vise vise = vise("plain");

  private static String csv(Outcome... outcomes) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PairingsCsv.write(Advised.bare(List.of(outcomes)), out);
    return out.toString(UTF_8);
  }

  /** {@code last}: settable, bolt_thread and hand_mm. */
  private static void assertRow(String expected, String last, Outcome outcome) throws IOException {
    assertEquals(HEADER + "\r\n" + expected + ",,," + last + ",,,,\r\n", csv(outcome));
  }

  private static String together(Advised advised) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PairingsCsv.write(List.of(advised.done()), out);
    String row = out.toString(UTF_8).lines().skip(1).findFirst().orElseThrow();
    return row.replaceFirst("(.*?,){29}", "");
  }

  @Test
  void row_severalOnOneTable_hasTheirNumberAndPlacesToTheNearest() throws IOException {
    Outcome outcome = new Made(machine, vise, Verdict.FITS).done();
    assertEquals(
        "3,-200.001;0.000;200.001,,,,,,,",
        together(new Advised(outcome).together("-200.0005005", "-0.0005", "200.0005")));
  }

  @Test
  void row_notOneOnTheTable_hasZeroAndNoPlaces() throws IOException {
    Outcome outcome = new Made(machine, vise, Verdict.NO_PLACE).done();
    assertEquals("0,,,,,,,,", together(new Advised(outcome).together()));
    assertEquals(",,,,,,,,", together(new Advised(outcome)));
  }

  /** Every length half a nanometre over or under a step, so that each direction shows. */
  @Test
  void row_fits_roundsEachColumnItsOwnWay() throws IOException {
    assertRow(
        "mill A,plain,fits,6.974,33.074,rear cover,screw rear,y,cutting,closed,6.001,1.251,front,"
            + "12.346,-35.000,base bolts,1;3,0.001,150.069,2.001,3.001,40.000,41.999,0.999,3.000,181.401,"
            + "309.999,267.999,",
        "yes,M12,",
        new Made(machine, vise, Verdict.FITS)
            .best("33.0749995")
            .limit(
                "6.9749995",
                "6.0000005",
                "1.2500005",
                "rear cover",
                "screw rear",
                Axis.Y,
                Situation.CUTTING,
                JawEnd.CLOSED)
            .at(Orientation.FRONT, "12.3455", "-35.0005")
            .usable("0.0000005", "150.0699995")
            .shortfall("2.0000005")
            .overhang("3.0000005")
            .play("40.0009995", "41.9999995", "0.9999995", "3")
            .nose("181.4000005")
            .room("309.9999995")
            .load("267.9999")
            .done());
  }

  @Test
  void row_fitsWithNothingListed_hasNoMarginAndNoLimit() throws IOException {
    assertRow(
        "mill A,plain,fits,,,,,,,,,,right,0.000,-35.000,base bolts,1;3,0.000,150.070,0.000,,"
            + "100.000,100.000,3.000,3.000,,310.000,268.000,",
        "no,M12,",
        new Made(machine, vise, Verdict.FITS)
            .but(Caveat.NOTHING_LISTED, Caveat.NOT_SETTABLE)
            .at(Orientation.RIGHT, "0", "-35")
            .usable("0", "150.07")
            .overhang("")
            .play("100", "100", "3", "3")
            .room("310")
            .load("268")
            .done());
  }

  @Test
  void row_awkward_hasTheRoomRoundTheHandle() throws IOException {
    assertRow(
        "mill A,plain,awkward,4.000,5.000,door,handle,y,loading,any,6.000,1.000,front,"
            + "0.000,0.000,base bolts,1;3,0.000,150.000,0.000,0.000,2.000,2.000,2.000,2.000,,,,",
        "yes,M12,11.000",
        new Made(machine, vise, Verdict.AWKWARD)
            .best("5")
            .limit("4", "door", "handle", Axis.Y, Situation.LOADING, JawEnd.ANY)
            .usable("0", "150")
            .play("2", "2", "2", "2")
            .hand("11")
            .done());
  }

  @Test
  void row_fitsWithRoomForAHand_hasNoneOfIt() throws IOException {
    Outcome outcome =
        new Made(machine, vise, Verdict.FITS)
            .best("5")
            .limit("5", "door", "handle", Axis.Y, Situation.LOADING, JawEnd.ANY)
            .hand("31")
            .done();
    assertTrue(csv(outcome).endsWith(",M12,,,,,\r\n"));
  }

  @Test
  void row_measure_hasANegativeMarginAndNoPlayNorUsableOpening() throws IOException {
    assertRow(
        "mill A,plain,measure,-1.588,-1.588,door,handle,y,loading,any,25.000,1.588,left,"
            + "1.000,2.000,base bolts,1;3,,,0.000,0.000,,,,,,310.000,-4.001,",
        ",M12,",
        new Made(machine, vise, Verdict.MEASURE)
            .best("-1.5875")
            .limit(
                "-1.5875", "25", "1.5875", "door", "handle", Axis.Y, Situation.LOADING, JawEnd.ANY)
            .at(Orientation.LEFT, "1", "2")
            .room("310")
            .load("-4.0001")
            .done());
  }

  @Test
  void row_limited_givesTheMarginOverTheUsableOpening() throws IOException {
    assertRow(
        "mill A,plain,limited,0.001,-11.475,rear cover,screw rear,x,cutting,open,6.000,1.000,rear,"
            + "0.000,0.000,swivel,1;3,45.300,150.070,0.000,0.000,1.000,1.000,1.000,1.000,,310.000,268.000,",
        "yes,M12,61.999",
        new Made(machine, vise, Verdict.LIMITED)
            .best("-11.475")
            .hand("61.9999995")
            .limit("0.001", "rear cover", "screw rear", Axis.X, Situation.CUTTING, JawEnd.OPEN)
            .at(Orientation.REAR, "0", "0")
            .mount("swivel")
            .usable("45.3", "150.07")
            .play("1", "1", "1", "1")
            .room("310")
            .load("268")
            .done());
  }

  @Test
  void row_noPlace_givesTheBestThereIs() throws IOException {
    assertRow(
        "mill A,plain,no place,-20.876,-20.876,table,handle,z,loading,any,6.000,1.000,front,"
            + "0.000,0.000,base bolts,1;3,,,5.000,0.000,,,,,,-1.000,268.000,",
        ",M12,",
        new Made(machine, vise, Verdict.NO_PLACE)
            .best("-20.8750005")
            .limit("-20.8750005", "table", "handle", Axis.Z, Situation.LOADING, JawEnd.ANY)
            .shortfall("5")
            .room("-1")
            .load("268")
            .done());
  }

  @Test
  void row_noPlaceWhateverTheBlanks_hasNoPlacement() throws IOException {
    assertRow(
        "mill A,plain,no place,,,,,,,,,,,,,,,,,,,,,,,,310.000,,",
        ",,",
        new Made(machine, vise, Verdict.NO_PLACE).room("310").done());
  }

  @Test
  void row_noMount_givesRoomAndLoadOnly() throws IOException {
    assertRow(
        "mill A,plain,no mount,,,,,,,,,,,,,,,,,,,,,,,,310.000,268.000,",
        ",,",
        new Made(machine, vise, Verdict.NO_MOUNT).room("310").load("268").done());
  }

  @Test
  void row_unknown_givesWhatIsMissingOnly() throws IOException {
    assertRow(
        "mill A,plain,unknown,,,,,,,,,,,,,,,,,,,,,,,,,,machines.rear_gap;guards.gap;vises.base_width",
        ",,",
        new Made(machine, vise, Verdict.UNKNOWN)
            .missing(Column.REAR_GAP, Column.GUARD_GAP, Column.BASE_WIDTH)
            .done());
  }

  @Test
  void write_namesWithCommasQuotesAndAccents_areQuotedAndUtf8() throws IOException {
    Outcome outcome = new Made(machine("Fräse, \"groß\""), vise, Verdict.NO_MOUNT).done();
    assertTrue(csv(outcome).contains("\r\n\"Fräse, \"\"groß\"\"\",plain,no mount,"));
  }

  @Test
  void write_inALocaleWithOtherDigits_isTheSame() throws IOException {
    Outcome outcome =
        new Made(machine, vise, Verdict.FITS).best("1234.5").at(Orientation.FRONT, "1", "2").done();
    String plain = csv(outcome);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
      assertEquals(plain, csv(outcome));
    } finally {
      Locale.setDefault(before);
    }
    assertTrue(plain.contains(",1234.500,"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1+2", "+cmd", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "＝1"})
  void write_textThatCouldStartAFormula_isNeutralisedInEveryTextColumn(String text)
      throws IOException {
    Outcome outcome =
        new Made(machine(text), vise(text), Verdict.FITS)
            .best("-3")
            .limit("-3", text, text, Axis.X, Situation.CUTTING, JawEnd.ANY)
            .mount(text)
            .done();
    try (CSVParser parser = CSVParser.parse(new StringReader(csv(outcome)), CSVFormat.RFC4180)) {
      CSVRecord row = parser.getRecords().get(1);
      for (int column : new int[] {0, 1, 5, 6, 15}) {
        // Where it starts after white space, both starts are kept from being one.
        String whole = "\t\r\n".indexOf(text.charAt(0)) < 0 ? text : text.replace("=", "'=");
        assertEquals("'" + whole, row.get(column));
      }
      assertEquals("-3.000", row.get(3), "numbers stay numbers");
    }
  }

  @Test
  void write_startsWithoutAByteOrderMark() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PairingsCsv.write(List.of(), out);
    assertArrayEquals((HEADER + "\r\n").getBytes(UTF_8), out.toByteArray());
  }
}
