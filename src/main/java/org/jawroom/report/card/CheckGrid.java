package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;

/** The verification table as it is laid out. */
final class CheckGrid {
  private static final double PADDING = 2.5;

  private final Letters letters;
  private final CardFacts facts;
  private final Type type;
  private final double width;
  private final List<Double> widths;

  CheckGrid(Letters letters, CardFacts facts, Type type, double width) {
    this.letters = letters;
    this.facts = facts;
    this.type = type;
    this.width = width;
    double unit = type.body();
    List<Double> others = List.of(1.9 * unit, 6.6 * unit, 6.6 * unit, 8.2 * unit, 8.6 * unit, 6.2 * unit);
    double where = width - others.stream().mapToDouble(Double::doubleValue).sum();
    this.widths =
        List.of(others.get(0), where, others.get(1), others.get(2), others.get(3), others.get(4), others.get(5));
  }

  Block block() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Heading.of(letters, "Gaps to check before the first run", type, width));
    if (facts.checkpoints().isEmpty()) {
      blocks.add(
          prose(
              "Nothing is listed that it could hit. Spindle off, nose up, handle off, rapids low: jog every axis"
                  + " slowly through its whole travel, jaws closed, then open, and look.",
              width));
      return new Stack(blocks, type.gap());
    }
    blocks.add(
        prose(
            "Spindle off, nose up, handle off, rapids low; then down the list. The gaps to expect are those of the"
                + " best place; less than expected means that something was measured wrong.",
            width));
    blocks.add(new Grid(widths, rows(), PADDING));
    return new Stack(blocks, type.gap());
  }

  private List<List<Block>> rows() {
    List<List<Block>> rows = new ArrayList<>();
    List<String> heads =
        List.of("", "Where", "Expect, mm", "Expect, in", "Check with", "Least allowed", "Found");
    List<Block> head = new ArrayList<>();
    for (int column = 0; column < heads.size(); column++) {
      head.add(Prose.bold(letters, heads.get(column), type.small(), inside(column)));
    }
    rows.add(head);
    for (int i = 0; i < facts.checkpoints().size(); i++) {
      rows.add(row(i + 1, facts.checkpoints().get(i)));
    }
    return rows;
  }

  private List<Block> row(int number, Checkpoint check) {
    return List.of(
        Prose.bold(letters, Integer.toString(number), type.body(), inside(0)),
        Prose.of(letters, new Item(check.pair() + ":", check.where()), type.body(), inside(1)),
        cell(check.expectedMm(), 2),
        cell(check.expectedInch(), 3),
        cell(check.gauge(), 4),
        cell(check.least(), 5),
        prose("", inside(6)));
  }

  private Block cell(String text, int column) {
    return prose(text, inside(column));
  }

  private Block prose(String text, double wide) {
    return Prose.of(letters, Item.of(text), type.body(), wide);
  }

  private double inside(int column) {
    return widths.get(column) - 2 * PADDING;
  }
}
