package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.space.Place;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.wording.TapeWords;

/** Where several vises of a kind stand side by side on one table. */
public final class Several {
  private Several() {}

  /** The place of each, as taped; they share turn and mount. */
  public static Item item(PeopleUnit unit, Outcome outcome, SideBySide row, List<Place> places) {
    Orientation turn = row.handleTo().orElseThrow();
    TapeWords tape = new TapeWords(unit, outcome.machine(), outcome.vise());
    List<String> each = new ArrayList<>();
    for (Place place : places) {
      each.add(
          each.size() + 1 + ": " + String.join(", ", tape.edges(turn, place.x(), place.y(), 0)));
    }
    return new Item(
        places.size() + " side by side, instead of the one place above:",
        String.join("; ", each)
            + "; each handle to the "
            + turn.word()
            + ", mount: "
            + row.mount()
            + ". Ranges, drawing and checks on this card are those of one alone at the place above.");
  }
}
