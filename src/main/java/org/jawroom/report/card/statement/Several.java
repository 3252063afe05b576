package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.TapeWords;

/** Where several vises of a kind stand side by side on one table. */
public final class Several {
  private Several() {}

  /** The place of each, as taped; they share turn and mount. */
  public static Item item(PeopleUnit unit, CardSubject subject, CardSubject.Row row) {
    Recommendation place = subject.place();
    TapeWords tape = new TapeWords(unit, subject.machine(), subject.vise());
    List<String> each = new ArrayList<>();
    for (Place at : row.places()) {
      each.add(
          each.size()
              + 1
              + ": "
              + String.join(", ", tape.edges(place.handleTo(), at.x(), at.y(), 0)));
    }
    return new Item(
        row.places().size() + " side by side:",
        String.join("; ", each)
            + ". The boxes above are no. "
            + (row.shown() + 1)
            + ", the tightest. Between two, jaws open, leave "
            + unit.brief(row.spacing(), Rounding.UP)
            + " or more. Make the checks overleaf at each of them.");
  }
}
