package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.jawroom.cli.JsonCheck;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * {@code explain --job} on the golden shop <i>jobs</i>, whose README works every number by hand.
 */
class ExplainJobTest {
  private static final String JOBS = GoldenTables.of("jobs").toString();

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int explain(String machine, String job, String... more) {
    String[] args = new String[6 + more.length];
    System.arraycopy(new String[] {"explain", JOBS, machine, "plain", "--job", job}, 0, args, 0, 6);
    System.arraycopy(more, 0, args, 6, more.length);
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }

  private String unwrapped() {
    return out.toString().replaceAll("\\R +", " ");
  }

  /** 18 - 2 7/8 - 2 - 8 = 5 1/8, 3/8 at either end, 300 - 75 - 10 = 215 lb. */
  @Test
  void explain_jobHeld_listsPlaceStackAndLoad() {
    assertEquals(0, explain("roomier", "three wide"), err.toString());
    String text = unwrapped();
    assertTrue(text.contains("Held: there is a place"), text);
    assertTrue(
        text.contains("Margin at the place below: 0.375 in, from screw front to door."), text);
    assertTrue(text.contains("Where to bolt it; jaws 3 to 3.5"), text);
    assertTrue(
        text.contains(
            "18 nose at its highest - 4.875 part's top - 8 longest tool = 5.125; 0.25 asked for"),
        text);
    assertTrue(text.contains("leave 97.52 kg"), text);
    assertTrue(text.contains("Lock out before reaching in."), text);
    assertTrue(out.toString().lines().allMatch(line -> line.length() <= 80), text);
  }

  @Test
  void explain_job_listsTheTightestGapsAndWithAllEveryOne() {
    assertEquals(0, explain("roomier", "three wide"), err.toString());
    List<String> brief = out.toString().lines().toList();
    out.getBuffer().setLength(0);
    assertEquals(0, explain("roomier", "three wide", "--all"), err.toString());
    List<String> all = out.toString().lines().toList();

    assertTrue(brief.size() <= 40, () -> String.join("\n", brief));
    assertEquals("--all prints every gap.", brief.get(brief.size() - 1));
    assertTrue(brief.stream().anyMatch(line -> line.startsWith("Tightest gaps (in;")));
    assertTrue(all.contains("Every part and guard there, tightest first"));
    assertTrue(all.size() > brief.size(), () -> String.join("\n", all));
    assertFalse(all.contains("--all prints every gap."));
  }

  @Test
  void explain_jobNotHeld_listsAllThatFails() {
    assertEquals(0, explain("short travel", "tall"), err.toString());
    List<String> lines = out.toString().lines().toList();
    assertEquals("Not held. What fails, the first first:", lines.get(3));
    assertEquals(
        "  the spindle does not reach the whole part where it is clear: short by 1.75",
        lines.get(4));
    assertEquals("  no room over the part for the longest tool: short by 0.38", lines.get(5));
    assertTrue(
        lines.stream()
            .anyMatch(line -> line.startsWith("Where nothing is hit, but the job is NOT")));
  }

  @Test
  void explain_jobUnknown_namesTheBlanks() {
    assertEquals(0, explain("not measured", "no length"), err.toString());
    assertTrue(out.toString().contains("Unknown: not measured: rear_gap."), out.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"three wide", "tall", "too wide", "heavy", "not weighed", "across", "elsewhere"})
  void explain_jsonOfEachJob_isValid(String job) {
    assertEquals(0, explain("roomier", job, "--json"), err.toString());
    assertTrue(JsonCheck.isValid(out.toString()), out.toString());
    assertTrue(out.toString().contains("\"job\": \"" + job + "\""), out.toString());
  }

  @Test
  void explain_jobMistyped_suggestsTheNearest() {
    assertEquals(2, explain("roomier", "heay"));
    assertEquals(
        List.of("There is no job \"heay\" in these tables; did you mean \"heavy\"?"),
        err.toString().lines().toList());
  }
}
