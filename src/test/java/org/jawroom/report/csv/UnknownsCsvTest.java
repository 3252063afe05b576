package org.jawroom.report.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.Relation;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.shop.value.Column;
import org.junit.jupiter.api.Test;

class UnknownsCsvTest {
  private static final String HEADER = "machine,vise,column,relation,limit_mm,sure_mm\r\n";

  private static String csv(Advice... advice) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    UnknownsCsv.write(List.of(advice), out);
    return out.toString(UTF_8);
  }

  private static Advised pairing(String machine, String vise) {
    return new Advised(new Made(machine(machine), vise(vise), Verdict.UNKNOWN).done());
  }

  @Test
  void rows_areOneABlankAndOneAGuard() throws IOException {
    assertEquals(
        HEADER
            + "A,v,machines.rear_gap,>=,41.280,\r\n"
            + "A,v,guards.gap (hose arm),>=,-3.000,\r\n"
            + "A,v,guards.gap (sill),any,,\r\n"
            + "A,v,vises.base_width,<=,170.000,\r\n"
            + "B,v,machines.rear_gap,never,,\r\n",
        csv(
            pairing("A", "v")
                .blank(Column.REAR_GAP, "", Relation.AT_LEAST, "41.28")
                .blank(Column.GUARD_GAP, "hose arm", Relation.AT_LEAST, "-3")
                .blank(Column.GUARD_GAP, "sill", Relation.ALWAYS, "")
                .blank(Column.BASE_WIDTH, "", Relation.AT_MOST, "170")
                .done(),
            pairing("A", "w").done(),
            pairing("B", "v").blank(Column.REAR_GAP, "", Relation.NEVER, "").done()));
  }

  @Test
  void row_leastIsRoundedUpAndMostDown() throws IOException {
    assertEquals(
        HEADER + "A,v,machines.rear_gap,>=,41.281,\r\n" + "A,v,vises.base_width,<=,169.999,\r\n",
        csv(
            pairing("A", "v")
                .blank(Column.REAR_GAP, "", Relation.AT_LEAST, "41.2800005")
                .blank(Column.BASE_WIDTH, "", Relation.AT_MOST, "169.9999995")
                .done()));
  }

  @Test
  void row_textThatCouldStartAFormula_isNeutralised() throws IOException {
    assertEquals(
        HEADER + "'-1,'=v,guards.gap (=2),any,,\r\n",
        csv(pairing("-1", "=v").blank(Column.GUARD_GAP, "=2", Relation.ALWAYS, "").done()));
  }
}
