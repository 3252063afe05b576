package org.jawroom.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
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
  })
  void explain_exampleShop_readsAsKept(String kept, String machine, String vise) throws Exception {
    assertEquals(0, explain(machine, vise));
    try (var in = getClass().getResourceAsStream("/org/jawroom/explain/" + kept)) {
      assertEquals(
          new String(in.readAllBytes(), StandardCharsets.UTF_8), out.toString().replace("\r\n", "\n"));
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

  @Test
  void explain_mistypedName_suggestsTheNearest() throws Exception {
    assertEquals(2, explain("rommy", "plain"));
    assertTrue(
        err.toString().startsWith(
            "There is no machine \"rommy\" in this shop; did you mean \"roomy\"?"),
        err.toString());
  }

  private int explain(String machine, String vise, String... more) throws Exception {
    Path example =
        Path.of(ExplainCommandTest.class.getResource("/org/jawroom/golden/example").toURI());
    String[] args = new String[4 + more.length];
    args[0] = "explain";
    args[1] = example.toString();
    args[2] = machine;
    args[3] = vise;
    System.arraycopy(more, 0, args, 4, more.length);
    return Main.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
  }
}
