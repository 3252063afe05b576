package org.jawroom.report.card.statement;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.drawing.view.Neighbour;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Layout;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * Several vises side by side on one table, of one kind or of a set.
 *
 * @param all from left to right
 * @param shown the index of the one that the card's figures are of
 * @param spacing the least distance between two of them
 * @param ofSet whether each has a card of its own, after a page of the whole table; else all are of
 *     one kind, share turn and mount, and have one card, that of the tightest
 */
public record CardRow(List<Stand> all, int shown, long spacing, boolean ofSet) {

  /**
   * A vise of the row where it stands.
   *
   * @param pairs every pair there, in ascending order of margin
   */
  public record Stand(Vise vise, Recommendation place, Layout layout, List<Limit> pairs) {
    public Stand {
      pairs = List.copyOf(pairs);
    }

    static Stand of(Vise vise, Inspection there) {
      return new Stand(vise, there.place(), there.layout(), there.pairs());
    }
  }

  public CardRow {
    all = List.copyOf(all);
  }

  /** The other vises. */
  List<Vise> others() {
    return IntStream.range(0, all.size())
        .filter(at -> at != shown)
        .mapToObj(at -> all.get(at).vise())
        .toList();
  }

  /** The others as a drawing shows them; numbered in a set. */
  public List<Neighbour> beside() {
    return IntStream.range(0, all.size())
        .filter(at -> at != shown)
        .mapToObj(at -> new Neighbour(all.get(at).layout(), ofSet ? "no. " + (at + 1) : ""))
        .toList();
  }

  /** Where each stands, as taped. */
  public Item item(PeopleUnit unit, Machine machine) {
    String apart =
        " Between two, jaws open, leave " + unit.brief(spacing, Rounding.UP) + " or more.";
    if (ofSet) {
      return new Item(
          "No. " + (shown + 1) + " of " + all.size() + ":",
          "the page of the whole table shows where the others stand." + apart);
    }
    List<String> each = new ArrayList<>();
    for (Stand stand : all) {
      Recommendation place = stand.place();
      List<String> edges =
          new TapeWords(unit, machine, stand.vise())
              .edges(place.handleTo(), place.x(), place.y(), 0);
      each.add(each.size() + 1 + ": " + String.join(", ", edges));
    }
    return new Item(
        all.size() + " side by side:",
        String.join("; ", each)
            + ". The boxes above are no. "
            + (shown + 1)
            + ", the tightest."
            + apart
            + " Make the checks overleaf at each of them.");
  }
}
