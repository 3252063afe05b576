package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.report.card.block.Block;
import org.jawroom.report.card.block.CardGrid;
import org.jawroom.report.card.block.Heading;
import org.jawroom.report.card.block.Letters;
import org.jawroom.report.card.block.Prose;
import org.jawroom.report.card.block.Stack;
import org.jawroom.report.card.block.Type;
import org.jawroom.report.card.measure.Checkpoint;
import org.jawroom.report.card.statement.Item;

/** The layout of the verification table. */
final class CheckGrid {
  private static final double PADDING = 2.5;

  /** The widths of all columns but the second, in multiples of the body size. */
  private static final List<Double> OTHERS = List.of(1.8, 7.8, 9.5, 5.0, 7.6, 5.0, 6.0);

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
    double others = OTHERS.stream().mapToDouble(share -> share * unit).sum();
    List<Double> all = new ArrayList<>(OTHERS.stream().map(share -> share * unit).toList());
    all.add(1, width - others);
    this.widths = List.copyOf(all);
  }

  Block block() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(Heading.of(letters, "Gaps to check before the first run", type, width));
    if (facts.checkpoints().isEmpty()) {
      blocks.add(
          prose(
              "Nothing is listed that it could hit. Spindle off, nose up, handle off, rapids low: jog every"
                  + " axis slowly through its whole travel, jaws closed, then open, and look.",
              width));
      return new Stack(blocks, type.gap());
    }
    blocks.add(
        prose(
            "Spindle off, nose up, handle off, rapids low. Go with care: something was measured"
                + " wrong or it stands elsewhere; tape it again, rapids low, a hand on the stop. Far"
                + " more than expected: it stands elsewhere. "
                + (facts.checkable()
                    ? "What was found goes into the table checks, gap by gap."
                    : "At an angle more may be found, never less: leave it out of the table checks."),
            width));
    blocks.add(new CardGrid(widths, rows(), PADDING));
    return new Stack(blocks, type.gap());
  }

  private List<List<Block>> rows() {
    List<List<Block>> rows = new ArrayList<>();
    List<String> heads =
        List.of(
            "",
            "Where",
            "Expect",
            "Check with",
            "STOP: less than",
            "GO WITH CARE",
            "GO: from",
            "Found");
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
        cell(new Item(Integer.toString(number), ""), 0),
        cell(new Item(check.pair() + ":", check.where()), 1),
        expected(check.expected(), 2),
        cell(Item.of(check.gauge()), 3),
        cell(new Item(check.stop(), ""), 4),
        cell(Item.of(check.stop().equals(check.go()) ? "–" : "between"), 5),
        cell(new Item(check.go(), ""), 6),
        cell(Item.of(""), 7));
  }

  private Block cell(Item item, int column) {
    return Prose.of(letters, item, type.body(), inside(column));
  }

  /** The range, and below it the tolerance it results from. */
  private Block expected(Item range, int column) {
    return new Stack(
        List.of(cell(new Item(range.label(), ""), column), cell(Item.of(range.text()), column)), 0);
  }

  private Block prose(String text, double wide) {
    return Prose.of(letters, Item.of(text), type.body(), wide);
  }

  private double inside(int column) {
    return widths.get(column) - 2 * PADDING;
  }
}
