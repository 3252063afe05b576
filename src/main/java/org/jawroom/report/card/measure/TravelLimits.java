package org.jawroom.report.card.measure;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.format.TapeFigure;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.value.Dimension;

/**
 * The travel that the clearances assume, as soft limits to set and as end positions to check with a
 * tape.
 */
public record TravelLimits(PeopleUnit unit, Machine machine) {

  public List<Item> items() {
    List<Item> items = new ArrayList<>();
    items.add(
        new Item(
            "Soft limits or stops:",
            "no wider than X "
                + down(machine.travelX())
                + ", Y "
                + down(machine.travelY())
                + " in all: the spindle's axis from "
                + ends(machine.spindleX(), machine.reachX(), machine.tableLength() / 2)
                + " from the table's left"
                + " edge and from "
                + ends(machine.spindleY(), machine.reachY(), machine.tableWidth() / 2)
                + " from its front edge."));
    List<String> gaps = new ArrayList<>();
    for (Side side : Side.values()) {
      Dimension gap = machine.gap(side);
      if (gap.isKnown()) {
        gaps.add(side.word() + " " + room(gap.length()));
      }
    }
    if (!gaps.isEmpty()) {
      items.add(
          new Item(
              "Ends of travel:",
              "gap left beside the table with the axis at its end, at least: "
                  + String.join(", ", gaps)
                  + "."));
    }
    return items;
  }

  /** Both ends, rounded inward. */
  private String ends(long middle, long reach, long edge) {
    long from = middle - reach + edge;
    long to = middle + reach + edge;
    return signed(from, Rounding.UP) + " to " + signed(to, Rounding.DOWN);
  }

  /** A distance from an edge; a negative one is put in words as beyond it. */
  private String signed(long distance, Rounding rounding) {
    long rounded = unit.rounded(distance, rounding);
    return unit.brief(Math.abs(rounded), Rounding.NEAREST) + (rounded < 0 ? " beyond" : "");
  }

  private String room(long gap) {
    TapeFigure tape = new TapeFigure(unit);
    long rounded = tape.rounded(gap, Rounding.UP);
    String figure = tape.text(Math.abs(rounded), Rounding.NEAREST);
    return rounded < 0 ? "no more than " + figure + " run under" : figure;
  }

  private String down(long length) {
    return unit.brief(length, Rounding.DOWN);
  }
}
