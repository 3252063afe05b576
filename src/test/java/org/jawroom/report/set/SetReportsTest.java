package org.jawroom.report.set;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.fixture.TestShop;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.report.Opened;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.SheetLimits;
import org.jawroom.report.xlsx.Styles;
import org.jawroom.shop.Shop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Sets in words and figures, by hand: a table 600 by 300 whose slots are 600 long, open guards at
 * both sides, and a vise whose base is 165 wide.
 */
class SetReportsTest {
  @TempDir Path folder;

  private Shop shop() throws Exception {
    String[] sizes = {
      "base_width",
      "140",
      "rear_reach",
      "50",
      "front_reach",
      "90",
      "fixed_jaw_thickness",
      "20",
      "moving_jaw_thickness",
      "20",
      "rear_projection_closed",
      "none",
      "rear_projection_open",
      "none",
      "front_projection_closed",
      "none",
      "front_projection_open",
      "none",
      "handle_radius",
      "none",
      "bolt_spacing",
      "60",
      "bolt_u",
      "20",
      "bolt_hole_u",
      "14",
      "bolt_hole_v",
      "14",
      "jaw_width",
      "120",
      "opening_max",
      "50"
    };
    String[] odd = sizes.clone();
    odd[Arrays.asList(odd).indexOf("14")] = "6";
    return TestShop.in(folder)
        .machine("mill")
        .vise("vise", sizes)
        .vise("odd, =1+1", odd)
        .vise("blank")
        .set("count", "2")
        .set("set", "too many", "count", "8")
        .set("set", "lost", "vise", "odd, =1+1")
        .set("set", "blank", "vise", "blank")
        .read()
        .shop()
        .orElseThrow();
  }

  private static List<SetOutcome> outcomes(Shop shop) {
    return shop.sets().stream()
        .map(set -> SetPairing.solve(shop.settings(), shop.machines().get(0), set))
        .toList();
  }

  @Test
  void csv_listsPlacesFromTheLeftAndWhatHinders() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SetsCsv.write(outcomes(shop()), out);
    assertEquals(
        List.of(
            "set,machine,fits,least_mm,arrangement,limited_by",
            "pair,mill,yes,125.000,vise front base_bolts -176.667 19.000;"
                + " vise front base_bolts 176.667 19.000,",
            "too many,mill,no,,,side by side",
            "lost,mill,no,,,\"no mount: odd, =1+1\"",
            "blank,mill,unknown,,,"),
        out.toString(StandardCharsets.UTF_8).lines().toList());
  }

  @Test
  void sheet_listsTheSameInWords() throws Exception {
    Shop shop = shop();
    try (SXSSFWorkbook book = new SXSSFWorkbook()) {
      Styles styles = new Styles(book.getXSSFWorkbook(), PeopleUnit.MM);
      SetsSheet.add(book, styles, shop.settings(), outcomes(shop), SheetLimits.XLSX);
      assertEquals(
          List.of(
              "pair\n2 × vise|mill|○ fits|125.0|"
                  + "1. vise: handle to the front, base bolts, M12, both bolts in slot 2 (of 3, counted"
                  + " from the front), base's left side 53.3 from the table's left edge, fixed-jaw face"
                  + " 169.0 from the table's front edge, 213.3 to the next\n"
                  + "2. vise: handle to the front, base bolts, M12, both bolts in slot 2 (of 3, counted"
                  + " from the front), base's left side 406.7 from the table's left edge, fixed-jaw face"
                  + " 169.0 from the table's front edge|"
                  + "vise: no room to tap it square\n"
                  + "vise: spindle misses 36.7 of the work",
              "too many\n8 × vise|mill|× does not fit||"
                  + "each stands there alone, but not all of them side by side|",
              "lost\nodd, =1+1|mill|× does not fit||neither bolts nor clamps hold odd, =1+1|",
              "blank\nblank|mill|? unknown||"
                  + "readings that decide it are blank or known only within bounds|"),
          Opened.rows(book.getSheet(SetsSheet.NAME)));
    }
  }
}
