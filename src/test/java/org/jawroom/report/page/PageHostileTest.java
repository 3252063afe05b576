package org.jawroom.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Names that would like to be more than names. */
class PageHostileTest {
  private static final String IMAGE = "<img src=x onerror=window.hurt=1>";
  private static final String SCRIPT = "</script><script>window.hurt=2</script>";
  private static final String DRAWING = "'><svg onload=window.hurt=3>";

  private static Browser browser;

  @TempDir private Path folder;

  @BeforeAll
  static void start() throws IOException {
    browser = Browser.start().orElse(null);
  }

  @BeforeEach
  void needsABrowser() {
    Browser.assumeThere();
  }

  @AfterAll
  static void stop() throws IOException {
    if (browser != null) {
      browser.close();
    }
  }

  @Test
  void names_thatAreMarkup_areShownAndNothingElse() throws Exception {
    ShopPage page = turned(ShopReader.read(tables(), Map.of()));
    browser.open(page.write(folder));
    assertNothingRan();
    String matrix = browser.text("matrix");
    assertTrue(matrix.contains(IMAGE) && matrix.contains(SCRIPT), matrix);
    for (int machine = 1; machine <= 2; machine++) {
      for (int vise = 1; vise <= 2; vise++) {
        browser.run("location.hash = arguments[0]", "#" + machine + "/" + vise);
        browser.until("the pairing open", "!document.getElementById('pairing').hidden");
        browser.settled();
        assertNothingRan();
      }
    }
    String pairing = browser.text("pairing");
    assertTrue(pairing.contains(DRAWING) && pairing.contains("a?b"), pairing);
    assertEquals(List.of(), browser.console());
  }

  /** Tables refuse a name that reverses what stands beside it, so it gets in behind them. */
  private static ShopPage turned(Reading reading) {
    assertEquals(List.of(), reading.faults());
    Shop shop = reading.shop().orElseThrow();
    List<Machine> machines =
        shop.machines().stream()
            .map(
                machine ->
                    machine.withGuardRows(
                        machine.guardRows().stream().map(PageHostileTest::turned).toList()))
            .toList();
    return ShopPage.of(new Shop(shop.settings(), machines, shop.vises(), List.of()));
  }

  private static Guard turned(Guard guard) {
    return guard.name().equals(IMAGE)
        ? new Guard(
            "a\u202Eb",
            guard.kind(),
            guard.carriedBy(),
            guard.when(),
            guard.side(),
            guard.gap(),
            guard.limits(),
            guard.clearance(),
            guard.tolerance())
        : guard;
  }

  private static void assertNothingRan() {
    assertEquals(
        0L, browser.run("return document.querySelectorAll('img, iframe, object, embed').length"));
    assertEquals(2L, browser.run("return document.querySelectorAll('script').length"));
    assertEquals(true, browser.run("return window.hurt === undefined"));
    assertEquals(
        0L,
        browser.run(
            "return [...document.querySelectorAll('*')].filter((one) =>"
                + " one.getAttributeNames().some((name) => name.startsWith('on'))).length"));
  }

  /** Every text that tables may hold, filled with such names. */
  private Path tables() throws IOException {
    Path tables = Files.createDirectory(folder.resolve("tables"));
    Files.writeString(
        tables.resolve("machines.csv"),
        "machine,description,table_moves,table_length,table_width,travel_x,travel_y,slot_count,slot_width,"
            + "slot_pitch,front_gap,rear_gap,left_gap,right_gap,nose_min,nose_max,looked_for,source,measured\n"
            + machine(IMAGE)
            + machine("plain mill"));
    Files.writeString(
        tables.resolve("guards.csv"),
        "machine,guard,kind,carried_by,when,side,gap\n"
            + "\""
            + IMAGE
            + "\",\""
            + DRAWING
            + "\",other,frame,always,rear,60\n"
            + "plain mill,\""
            + IMAGE
            + "\",other,frame,always,front,20\n"
            + "plain mill,\""
            + SCRIPT
            + "\",other,frame,always,rear,20\n");
    Files.writeString(
        tables.resolve("vises.csv"),
        "vise,description,jaw_width,jaw_height,bed_height,opening_max,base_width,rear_reach,front_reach,"
            + "fixed_jaw_thickness,moving_jaw_thickness,rear_projection_closed,rear_projection_open,"
            + "front_projection_closed,front_projection_open,screw_height,screw_diameter,handle_radius,"
            + "handle_depth,bolt_spacing,bolt_u,bolt_hole_u,bolt_hole_v,source,measured\n"
            + vise(SCRIPT)
            + vise(DRAWING));
    Files.writeString(
        tables.resolve("vise_parts.csv"),
        "vise,part,u_min_closed,u_max_closed,v_min,v_max,w_min,w_max\n"
            + "\""
            + SCRIPT
            + "\",\""
            + IMAGE
            + "\",10,20,80,100,10,50\n"
            + "\""
            + DRAWING
            + "\",\""
            + DRAWING
            + "\",-150,-10,80,100,10,50\n");
    Files.writeString(
        tables.resolve("mounts.csv"),
        "vise,mount,u,v,hole_u,hole_v\n\"" + SCRIPT + "\",\"" + IMAGE + "\",60,0,40,18\n");
    return tables;
  }

  private static String machine(String name) {
    return "\""
        + name
        + "\",\""
        + SCRIPT
        + "\",xy,900,400,600,400,3,14,100,120,80,90,90,100,500,head,rule,\""
        + IMAGE
        + "\"\n";
  }

  private static String vise(String name) {
    return "\""
        + name
        + "\",\""
        + IMAGE
        + "\",125,40,55,125,165,55,285,24,48,32,none,30,30,38,22,none,,140,85,"
        + "42,17,caliper,\""
        + DRAWING
        + "\"\n";
  }
}
