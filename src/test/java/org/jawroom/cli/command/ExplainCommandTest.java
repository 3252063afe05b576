package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jawroom.cli.JsonCheck;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code explain} of the shop worked by hand, as whole texts that were read line by line. */
class ExplainCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  @ParameterizedTest
  @CsvSource({
    "fits.txt, roomy, plain",
    "limited.txt, tight, six inch",
    "measure.txt, exact-taped, six inch",
    "no-place.txt, roomy, six inch full swing",
    "no-mount.txt, roomy, wide bolts",
    "unknown.txt, not-measured, plain",
    "turns.txt, roomy, centred",
  })
  void explain_exampleShop_readsAsKept(String kept, String machine, String vise) throws Exception {
    assertEquals(0, explain(machine, vise));
    assertReadsAs(kept);
  }

  @ParameterizedTest
  @CsvSource({"all-limited.txt, tight, six inch", "all-no-mount.txt, roomy, wide bolts"})
  void explain_all_readsAsKept(String kept, String machine, String vise) throws Exception {
    assertEquals(0, explain(machine, vise, "--all"));
    assertReadsAs(kept);
  }

  private void assertReadsAs(String kept) throws Exception {
    try (var in = getClass().getResourceAsStream("/org/jawroom/explain/" + kept)) {
      assertEquals(
          new String(in.readAllBytes(), StandardCharsets.UTF_8),
          out.toString().replace("\r\n", "\n"));
    }
    assertTrue(out.toString().lines().allMatch(line -> line.length() <= 80), out.toString());
  }

  @Test
  void explain_json_isOneObjectWithTheWitness() throws Exception {
    assertEquals(0, explain("exact", "six inch", "--json"));
    String json = out.toString();
    assertTrue(JsonCheck.isValid(json), json);
    assertTrue(json.contains("\"verdict\": \"fits\""), json);
    assertTrue(json.contains("\"best_margin_mm\": 0.000"), json);
    assertTrue(json.contains("\"guard\": \"door\""), json);
  }

  @ParameterizedTest
  @CsvSource({
    "roomy, plain",
    "tight, six inch",
    "exact-taped, six inch",
    "roomy, six inch full swing",
    "roomy, wide bolts",
    "not-measured, plain",
    "roomy, centred",
  })
  void explain_jsonOfEveryVerdict_isValidAndInOneOrder(String machine, String vise)
      throws Exception {
    assertEquals(0, explain(machine, vise, "--json"));
    String json = out.toString();
    assertTrue(JsonCheck.isValid(json), json);
    List<String> keys =
        json.lines()
            .filter(line -> line.matches(" {2}\".*"))
            .map(line -> line.split("\"")[1])
            .toList();
    assertEquals(
        List.of(
            "machine",
            "vise",
            "verdict",
            "margin_mm",
            "best_margin_mm",
            "usable_from_mm",
            "usable_to_mm",
            "room_over_jaws_mm",
            "load_left_kg",
            "caveats",
            "in_doubt",
            "checked",
            "missing",
            "open",
            "margin_at_worst_mm",
            "margin_at_best_mm",
            "recommended",
            "pairs",
            "roomiest",
            "others",
            "misses",
            "remedies",
            "tolerance_needed",
            "limits",
            "other_vises",
            "other_machines",
            "per_table",
            "not_looked_for",
            "caution"),
        keys);
  }

  @Test
  void explain_otherUnitShown_saysTheSameInIt() throws Exception {
    assertEquals(0, explain("tight", "six inch", "--show", "mm"));
    assertTrue(
        out.toString().contains("nothing listed is hit while the jaws stay 92.2 to 152.4 mm"),
        out.toString());
    assertEquals(0, explain("roomy", "plain", "--show", "in"));
    assertTrue(out.toString().contains("Where to bolt it (in)"), out.toString());
  }

  @Test
  void explain_inchShop_readsAsKept() throws Exception {
    Path folder = Path.of("src/test/resources/org/jawroom/inch");
    assertEquals(
        0,
        Main.run(
            new String[] {"explain", folder.toString(), "bed mill", "machine vise 6"},
            new PrintWriter(out, true),
            new PrintWriter(err, true)));
    assertEquals(
        Files.readString(folder.resolve("explain.txt")), out.toString().replace("\r\n", "\n"));
  }

  @Test
  void explain_inchMachine_readsInInches() throws Exception {
    assertEquals(0, explain("tight", "six inch"));
    List<String> lines = out.toString().lines().toList();
    assertTrue(
        unwrapped().contains("nothing listed is hit while the jaws stay 3.63 to 6 in open"),
        out.toString());
    assertTrue(
        lines.contains("  fixed-jaw face 7 19/32 from the table's front edge"), out.toString());
    assertTrue(out.toString().contains(": jaws at 3.63, table all the way back"), out.toString());
  }

  @Test
  void explain_mistypedName_suggestsTheNearestInOneLine() throws Exception {
    assertEquals(2, explain("rommy", "plain"));
    assertEquals(
        List.of("There is no machine \"rommy\" in these tables; did you mean \"roomy\"?"),
        err.toString().lines().toList());
    assertEquals("", out.toString());
  }

  @Test
  void explain_namesTheWrongWayRound_saysWhichComesFirst() throws Exception {
    assertEquals(2, explain("plain", "roomy"));
    assertEquals(
        List.of(
            "There is no machine \"plain\" in these tables; a vise is named so: the machine comes first"),
        err.toString().lines().toList());
  }

  @Test
  void explain_nameInOtherCase_isFound() throws Exception {
    assertEquals(0, explain("ROOMY", "Plain"));
    assertTrue(out.toString().startsWith("roomy x plain"), out.toString());
  }

  private String unwrapped() {
    return out.toString().replaceAll("\\s+", " ");
  }

  private int explain(String machine, String vise, String... more) throws Exception {
    Path example = GoldenTables.of("example");
    String[] args = new String[4 + more.length];
    args[0] = "explain";
    args[1] = example.toString();
    args[2] = machine;
    args[3] = vise;
    System.arraycopy(more, 0, args, 4, more.length);
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
