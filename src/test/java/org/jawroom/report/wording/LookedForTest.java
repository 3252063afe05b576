package org.jawroom.report.wording;

import static org.jawroom.fixture.outcome.Invented.CALIPER;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.jawroom.fixture.Guards;
import org.jawroom.fixture.outcome.Invented;
import org.jawroom.shop.machine.Axes;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.When;
import org.junit.jupiter.api.Test;

class LookedForTest {

  private static Machine machine(List<String> lookedFor, List<Guard> guards) {
    return Invented.machine("m", "", "900", "600", lookedFor, CALIPER, guards);
  }

  @Test
  void words_nothingSaid_namesEveryKind() {
    assertEquals(
        "not looked for: head, tool changer, nozzle, sill, column, cover",
        LookedFor.words(machine(List.of(), List.of())));
  }

  @Test
  void words_everyKindSaid_inAnyWriting() {
    assertEquals(
        "all usual guards looked for",
        LookedFor.words(
            machine(
                List.of(" HEAD", "Tool-Changer", "nozzle", "sill", "column", "cover", "lamp"),
                List.of())));
  }

  @Test
  void words_aKindThatIsListed_wasLookedFor() {
    Guard head = Guards.box("spindle head", "head", Axes.NONE, When.ALWAYS, Guards.EVERYWHERE);
    assertEquals(
        "not looked for: tool changer, nozzle, sill, column",
        LookedFor.words(machine(List.of("cover"), List.of(head))));
  }
}
