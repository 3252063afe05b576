package org.jawroom.tables.source.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jawroom.tables.source.grid.Fault;
import org.junit.jupiter.api.Test;

class FilledRowsTest {
  @Test
  void read_aFirstLineThatDeclaresTheDelimiter_isCounted() {
    assertEquals(
        "tape.csv row 1: has no columns table, name, reading and value; fill in tape.csv as written",
        refused("a,b\n"));
    assertEquals(
        "tape.csv row 2: has no columns table, name, reading and value; fill in tape.csv as written",
        refused("sep=;\ntable,name,reading,value\n"));
    assertEquals(
        "tape.csv row 1: names no character that can stand between cells; write sep=; or sep=, or"
            + " delete it",
        refused("sep=x\ntable,name,reading,value\n"));
    assertEquals(
        "tape.csv row 4: has more cells than the header; a cell that holds a ; stands in quotes",
        refused("sep=;\n\ntable;name;reading;value\na;b;c;d;e\n"));
  }

  private static String refused(String text) {
    List<Fault> faults =
        FilledRows.read(text.getBytes(StandardCharsets.UTF_8), "tape.csv").faults();
    assertEquals(1, faults.size());
    return faults.get(0).toString();
  }
}
