package org.jawroom.report.csv;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.jawroom.fixture.outcome.Invented.machine;
import static org.jawroom.fixture.outcome.Invented.vise;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.jawroom.advice.Advice;
import org.jawroom.advice.remedy.Direction;
import org.jawroom.advice.remedy.RemedyKind;
import org.jawroom.fixture.outcome.Advised;
import org.jawroom.fixture.outcome.Made;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Verdict;
import org.junit.jupiter.api.Test;

class RemediesCsvTest {
  private static final String HEADER =
      "machine,vise,remedy,amount_mm,then,margin_then_mm,limited_by_then\r\n";

  private static String csv(Advice... advice) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    RemediesCsv.write(List.of(advice), out);
    return out.toString(UTF_8);
  }

  private static Advised pairing(String machine, String vise) {
    return new Advised(new Made(machine(machine), vise(vise), Verdict.NO_PLACE).done());
  }

  @Test
  void rows_areOneARemedyInTheOrderGiven() throws IOException {
    assertEquals(
        HEADER
            + "A,v,handle off,,fits,0.120,door\r\n"
            + "A,v,turn,,fits,3.000,rear cover\r\n"
            + "A,v,\"travel, table front\",12.010,fits,0.000,door\r\n"
            + "A,v,raise,69.850,fits,0.000,table\r\n"
            + "A,v,move door,38.100,fits,0.009,door\r\n"
            + "A,v,clearance,1.200,fits,0.000,door\r\n"
            + "B,v,upper swing,,fits,1.000,door\r\n",
        csv(
            pairing("A", "v")
                .remedy(RemedyKind.HANDLE_OFF, "", "0.12", "door")
                .turn(Orientation.LEFT, "3", "rear cover")
                .remedy(RemedyKind.TRAVEL_FRONT, "12.01", "0", "door")
                .remedy(RemedyKind.RAISE, "69.85", "0", "table")
                .move("door", Direction.FRONT, "38.1", "0.009")
                .remedy(RemedyKind.CLEARANCE, "1.2", "0", "door")
                .done(),
            pairing("A", "w").done(),
            pairing("B", "v").remedy(RemedyKind.UPPER_SWING, "", "1", "door").done()));
  }

  @Test
  void row_roundsTheAmountUpAndTheMarginDown() throws IOException {
    assertEquals(
        HEADER + "A,v,raise,10.001,fits,0.000,door\r\n",
        csv(pairing("A", "v").remedy(RemedyKind.RAISE, "10.0000005", "0.0009995", "door").done()));
  }

  @Test
  void row_textThatCouldStartAFormula_isNeutralised() throws IOException {
    assertEquals(
        HEADER + "'=1,'@v,move +2,1.000,fits,0.000,'+2\r\n",
        csv(pairing("=1", "@v").move("+2", Direction.UP, "1", "0").done()));
  }
}
