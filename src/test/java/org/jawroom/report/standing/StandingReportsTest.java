package org.jawroom.report.standing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.fixture.TestShop;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.placement.standing.StandingPairing;
import org.jawroom.placement.standing.StandingTable;
import org.jawroom.report.Opened;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Standing vises in words and figures, by hand: a table 600 by 300 whose slots lie at y = −100, 0
 * and 100, the door 80 in front of it and the rear cover 50 behind; a vise whose base reaches 50 to
 * the rear and 90 to the front of the jaw, 140 wide, its bolts 20 in front of it with 1 mm of play.
 */
class StandingReportsTest {
  @TempDir Path folder;

  private static final String[] SIZES = {
    "base_width", "140",
    "rear_reach", "50",
    "front_reach", "90",
    "fixed_jaw_thickness", "20",
    "moving_jaw_thickness", "20",
    "rear_projection_closed", "none",
    "rear_projection_open", "none",
    "front_projection_closed", "none",
    "front_projection_open", "none",
    "handle_radius", "none",
    "bolt_spacing", "60",
    "bolt_u", "20",
    "bolt_hole_u", "14",
    "bolt_hole_v", "14",
    "jaw_width", "120",
    "opening_max", "150"
  };

  private Shop shop() throws Exception {
    return TestShop.in(folder)
        .machine("mill")
        .vise("odd, =1+1", SIZES)
        .vise("blank")
        // The jaw's face at y = 120, the base's rear end at 170, the cover at 200: 24 to spare.
        .standing("vise", "odd, =1+1", "from_left", "230", "from_front", "270", "tolerance", "1")
        // In front: the jaw, open, at y = −80 − 170 = −250, the door at −230: open 124 to be clear.
        .standing("vise", "odd, =1+1", "from_left", "230", "from_front", "70")
        .standing("vise", "odd, =1+1", "from_left", "230", "from_front", "100")
        .standing("vise", "odd, =1+1", "handle_to", "rear", "from_left", "230", "from_front", "30")
        .standing("vise", "blank")
        .read()
        .shop()
        .orElseThrow();
  }

  private static List<StandingOutcome> outcomes(Shop shop) {
    return shop.standing().stream()
        .map(standing -> StandingPairing.solve(shop.settings(), standing))
        .toList();
  }

  @Test
  void csv_hasARowForEach() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StandingCsv.write(outcomes(shop()), out);
    assertEquals(
        List.of(
            "machine,vise,handle_to,x_mm,y_mm,says,margin_mm,limited_by,limiting_part,limiting_axis,"
                + "limiting_situation,usable_from_mm,usable_to_mm,reach_shortfall_mm,move_x_mm,"
                + "move_y_mm,turn_to",
            "mill,\"odd, =1+1\",front,0.000,120.000,fits,23.000,rear cover,base,y,cutting,0.000,150.000,"
                + "0.000,0.000,-100.000,front",
            "mill,\"odd, =1+1\",front,0.000,-80.000,limited,-26.000,door,moving jaw,y,cutting,0.000,"
                + "124.000,80.000,0.000,100.000,front",
            "mill,\"odd, =1+1\",front,0.000,-50.000,off the slots,,,,,,,,,0.000,70.000,front",
            "mill,\"odd, =1+1\",rear,0.000,-120.000,fits,54.000,door,base,y,cutting,0.000,150.000,0.000,"
                + "0.000,140.000,front",
            "mill,blank,front,0.000,0.000,off the slots,,,,,,,,,,,"),
        out.toString(StandardCharsets.UTF_8).lines().toList());
  }

  @Test
  void sheet_listsTheSameInWords() throws Exception {
    Shop shop = shop();
    try (SXSSFWorkbook book = new SXSSFWorkbook()) {
      Styles styles = new Styles(book.getXSSFWorkbook(), PeopleUnit.MM);
      StandingSheet.add(book, styles, outcomes(shop), SheetLimits.XLSX);
      assertEquals(
          List.of(
              "mill|odd, =1+1|● fits|23.0|rear cover · base|handle to the front, base bolts\n"
                  + "base's left side 230.0 from the table's left edge\n"
                  + "fixed-jaw face 270.0 from the table's front edge|100 to the front|",
              "mill|odd, =1+1|↔ limited|-26.0|door · moving jaw, open|handle to the front, base bolts\n"
                  + "base's left side 230.0 from the table's left edge\n"
                  + "fixed-jaw face 70.0 from the table's front edge|100 to the rear|keep open 0 to 124\n"
                  + "no room to tap it square\n"
                  + "spindle misses 80 of the work",
              "mill|odd, =1+1|≠ off the slots|||handle to the front, base bolts\n"
                  + "base's left side 230.0 from the table's left edge\n"
                  + "fixed-jaw face 100.0 from the table's front edge|70 to the rear|held nearest with base's left side 230.0 from the table's left edge, fixed-jaw face 71.0 from the table's front edge",
              "mill|odd, =1+1|● fits|54.0|door · base|handle to the rear, base bolts\n"
                  + "base's left side 230.0 from the table's left edge\n"
                  + "fixed-jaw face 30.0 from the table's front edge|turn its handle to the front, 140 to the rear|",
              "mill|blank|? perhaps off the slots|||handle to the front, base bolts\n"
                  + "middle of the jaws 300.0 from the table's left edge\n"
                  + "fixed-jaw face 150.0 from the table's front edge||not measured: base_width, rear_reach, front_reach, fixed_jaw_thickness, moving_jaw_thickness, rear_projection_closed, rear_projection_open, front_projection_closed, front_projection_open, screw_height, screw_diameter, handle_radius, handle_depth, bolt_spacing, bolt_u, bolt_hole_u, bolt_hole_v"),
          Opened.rows(book.getSheet(StandingSheet.NAME)));
    }
  }

  @Test
  void brief_isOfAsciiAndShort() throws Exception {
    Shop shop = shop();
    StandingWords words = new StandingWords(PeopleUnit.MM);
    assertEquals(
        List.of(
            "odd, =1+1 fits, 23.0 mm to spare",
            "odd, =1+1 limited: keep open 0 to 124",
            "odd, =1+1 off the slots",
            "odd, =1+1 fits, 54.0 mm to spare",
            "blank perhaps off the slots"),
        outcomes(shop).stream().map(words::brief).toList());
  }

  /** Bases 140 wide, 230 and 372.3 from the left edge, so 2.3 apart; and another 368 from it. */
  @Test
  void words_visesCloserThanTheSpacing_nameThem() throws Exception {
    Shop shop =
        TestShop.in(folder)
            .machine("mill")
            .vise("left", SIZES)
            .vise("right", SIZES)
            .vise("into it", SIZES)
            .standing("vise", "left", "from_left", "230", "from_front", "270")
            .standing("vise", "right", "from_left", "372.3", "from_front", "270")
            .standing("vise", "into it", "from_left", "368", "from_front", "270")
            .read()
            .shop()
            .orElseThrow();
    StandingWords words = new StandingWords(PeopleUnit.MM);

    List<StandingOutcome> both =
        StandingTable.solve(shop.settings(), shop.standing().subList(0, 2));
    assertEquals("left fits, 24.0 mm to spare; only 2.3 from right", words.brief(both.get(0)));
    assertEquals("○ fits", words.signed(both.get(0)));
    assertEquals(List.of("only 2.3 from right"), words.minds(both.get(0)));

    StandingOutcome left = StandingTable.solve(shop.settings(), shop.standing()).get(0);
    assertEquals(
        List.of("only 2.3 from right", "overlaps into it by 2, jaws at some opening"),
        words.minds(left));
  }
}
