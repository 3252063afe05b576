package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jawroom.report.card.block.AtLeast;
import org.jawroom.report.card.block.Block;
import org.jawroom.report.card.block.CardColumns;
import org.jawroom.report.card.block.Framed;
import org.jawroom.report.card.block.Letters;
import org.jawroom.report.card.block.PictureFrame;
import org.jawroom.report.card.block.Prose;
import org.jawroom.report.card.block.Stack;
import org.jawroom.report.card.block.Type;
import org.jawroom.report.card.measure.TapeRange;
import org.jawroom.report.card.statement.Item;

/** Lays out the sections of a card at one size of type. */
final class CardLayout {
  private static final double BETWEEN = CardBlocks.BETWEEN;
  private static final double LEAST_PICTURE = 130;

  private final Letters letters;
  private final CardFacts facts;
  private final Type type;
  private final double width;
  private final CardBlocks blocks;

  CardLayout(Letters letters, CardFacts facts, Type type, double width) {
    this.letters = letters;
    this.facts = facts;
    this.type = type;
    this.width = width;
    this.blocks = new CardBlocks(letters, type, width);
  }

  /**
   * Returns the sections of the first page, where to set it up, from top to bottom.
   *
   * @param room the height available for all of them
   * @param gap between two sections
   * @return an empty list if they do not fit
   */
  List<Block> setUp(PDFormXObject picture, double room, double gap) {
    Block placing = placing(half());
    List<Block> above =
        new ArrayList<>(
            List.of(
                blocks.header(
                    facts.unit(), facts.vise() + " on " + facts.machine(), facts.stamp())));
    if (!facts.alarms().isEmpty()) {
      above.add(blocks.alarms(facts.alarms()));
    }
    List<Block> below = new ArrayList<>();
    below.add(
        new CardColumns(
            blocks.section("Hold-down", facts.bolts(), half()),
            blocks.section("Tapping it square", facts.tapping(), half()),
            half() + BETWEEN));
    below.add(
        facts.part().isEmpty()
            ? blocks.steps(facts.steps(), width)
            : new CardColumns(
                blocks.section("The part", facts.part(), half()),
                blocks.steps(facts.steps(), half()),
                half() + BETWEEN));
    double left = room - CardBlocks.height(above, gap) - CardBlocks.height(below, gap) - gap;
    if (left < Math.max(placing.height(), LEAST_PICTURE)) {
      return List.of();
    }
    double wide = picture.getBBox().getWidth();
    double high = Math.min(left, half() * picture.getBBox().getHeight() / wide);
    Block drawing = new PictureFrame(picture, half(), Math.max(high, placing.height()));
    List<Block> all = new ArrayList<>(above);
    all.add(new CardColumns(drawing, placing, half() + BETWEEN));
    all.addAll(below);
    return all;
  }

  /** The sections of the second page, what to check before the first run; empty likewise. */
  List<Block> check(double room, double gap) {
    List<Block> all =
        List.of(
            blocks.header(facts.unit(), facts.vise() + " on " + facts.machine(), facts.stamp()),
            checks(),
            new CardColumns(
                blocks.section("Limits to set", facts.limits(), half()),
                blocks.cautions(facts.cautions(), half()),
                half() + BETWEEN),
            blocks.footer(facts.origin()));
    return CardBlocks.height(all, gap) > room + gap ? List.of() : all;
  }

  private double half() {
    return (width - BETWEEN) / 2;
  }

  private Block placing(double wide) {
    List<Block> all = new ArrayList<>();
    all.add(blocks.heading("Where it stands", wide));
    double padding = type.body() / 2;
    double box = (wide - padding) / 2;
    List<Block> boxes = facts.tape().stream().map(range -> tape(range, box - 2 * padding)).toList();
    double high = boxes.stream().mapToDouble(Block::height).max().orElse(0);
    List<Block> framed =
        boxes.stream()
            .map(inside -> (Block) new Framed(new AtLeast(inside, high), box, padding, 1, 1))
            .toList();
    all.add(new CardColumns(framed.get(0), framed.get(1), box + padding));
    facts.placing().forEach(item -> all.add(blocks.prose(item, type.body(), wide)));
    return new Stack(all, type.gap());
  }

  private Block tape(TapeRange range, double wide) {
    List<Block> lines = new ArrayList<>();
    lines.add(blocks.prose(Item.of(range.what()), type.body(), wide));
    lines.add(Prose.bold(letters, range.best(), type.figure(), wide));
    lines.add(blocks.prose(Item.of(range.from()), type.body(), wide));
    range
        .range()
        .ifPresent(
            may ->
                lines.add(
                    blocks.prose(new Item(may + ",", "best " + range.best()), type.body(), wide)));
    return new Stack(lines, 1);
  }

  private Block checks() {
    return new CheckGrid(letters, facts, type, width).block();
  }
}
