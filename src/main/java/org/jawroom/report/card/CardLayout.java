package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jawroom.report.card.block.AtLeast;
import org.jawroom.report.card.block.Block;
import org.jawroom.report.card.block.CardColumns;
import org.jawroom.report.card.block.Framed;
import org.jawroom.report.card.block.Heading;
import org.jawroom.report.card.block.Letters;
import org.jawroom.report.card.block.PictureFrame;
import org.jawroom.report.card.block.Prose;
import org.jawroom.report.card.block.Signature;
import org.jawroom.report.card.block.Stack;
import org.jawroom.report.card.block.Type;
import org.jawroom.report.card.measure.TapeRange;
import org.jawroom.report.card.statement.Item;

/** Lays out the sections of a card at one size of type. */
final class CardLayout {
  private static final double BETWEEN = 14;
  private static final double LEAST_PICTURE = 130;

  private final Letters letters;
  private final CardFacts facts;
  private final Type type;
  private final double width;

  CardLayout(Letters letters, CardFacts facts, Type type, double width) {
    this.letters = letters;
    this.facts = facts;
    this.type = type;
    this.width = width;
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
    List<Block> above = new ArrayList<>(List.of(header()));
    if (!facts.alarms().isEmpty()) {
      above.add(alarms());
    }
    List<Block> below = new ArrayList<>();
    below.add(
        new CardColumns(
            section("Hold-down", facts.bolts(), half()),
            section("Tapping it square", facts.tapping(), half()),
            half() + BETWEEN));
    below.add(
        facts.part().isEmpty()
            ? steps(width)
            : new CardColumns(
                section("The part", facts.part(), half()), steps(half()), half() + BETWEEN));
    double left = room - height(above, gap) - height(below, gap) - gap;
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
            header(),
            checks(),
            new CardColumns(
                section("Limits to set", facts.limits(), half()),
                cautions(half()),
                half() + BETWEEN),
            footer());
    return height(all, gap) > room + gap ? List.of() : all;
  }

  private static double height(List<Block> blocks, double gap) {
    return blocks.stream().mapToDouble(Block::height).sum() + gap * blocks.size();
  }

  private double half() {
    return (width - BETWEEN) / 2;
  }

  private Block header() {
    double stampSize = type.title();
    String stamp = letters.printable(facts.stamp());
    double padding = type.body() / 2;
    double stampWidth = letters.width(stamp, true, stampSize) + 2 * padding + 1;
    Block stampBox =
        new Framed(
            Prose.bold(letters, stamp, stampSize, stampWidth - 2 * padding),
            stampWidth,
            padding,
            1.5,
            1);
    double wide = width - stampWidth - BETWEEN;
    Block title =
        new Stack(
            List.of(
                prose(
                    Item.of(
                        "Setup card. Lengths in "
                            + facts.unit()
                            + " unless a unit stands beside them."),
                    type.small(),
                    wide),
                Prose.bold(letters, facts.vise() + " on " + facts.machine(), type.title(), wide)),
            1);
    return new CardColumns(title, stampBox, width - stampWidth);
  }

  private Block alarms() {
    double padding = type.body() / 2;
    List<Block> lines = new ArrayList<>();
    for (String alarm : facts.alarms()) {
      lines.add(Prose.bold(letters, alarm, type.alarm(), width - 2 * padding));
    }
    return new Framed(new Stack(lines, type.gap()), width, padding, 2, 0.93);
  }

  private Block placing(double wide) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading("Where it stands", wide));
    double padding = type.body() / 2;
    double box = (wide - padding) / 2;
    List<Block> boxes = facts.tape().stream().map(range -> tape(range, box - 2 * padding)).toList();
    double high = boxes.stream().mapToDouble(Block::height).max().orElse(0);
    List<Block> framed =
        boxes.stream()
            .map(inside -> (Block) new Framed(new AtLeast(inside, high), box, padding, 1, 1))
            .toList();
    blocks.add(new CardColumns(framed.get(0), framed.get(1), box + padding));
    facts.placing().forEach(item -> blocks.add(prose(item, type.body(), wide)));
    return new Stack(blocks, type.gap());
  }

  private Block tape(TapeRange range, double wide) {
    List<Block> lines = new ArrayList<>();
    lines.add(prose(Item.of(range.what()), type.body(), wide));
    lines.add(Prose.bold(letters, range.best(), type.figure(), wide));
    lines.add(prose(Item.of(range.from()), type.body(), wide));
    range
        .range()
        .ifPresent(
            may ->
                lines.add(prose(new Item(may + ",", "best " + range.best()), type.body(), wide)));
    return new Stack(lines, 1);
  }

  private Block section(String heading, List<Item> items, double wide) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading(heading, wide));
    items.forEach(item -> blocks.add(prose(item, type.body(), wide)));
    return new Stack(blocks, type.gap());
  }

  private Block steps(double wide) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading("Setting it up", wide));
    IntStream.range(0, facts.steps().size())
        .forEach(i -> blocks.add(marked((i + 1) + ".", facts.steps().get(i), wide)));
    return new Stack(blocks, type.gap());
  }

  private Block cautions(double wide) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading("Mind", wide));
    facts.cautions().forEach(caution -> blocks.add(marked("!", caution, wide)));
    return new Stack(blocks, type.gap());
  }

  private Block checks() {
    return new CheckGrid(letters, facts, type, width).block();
  }

  private Block footer() {
    double sign = width * 0.3;
    double wide = width - sign - BETWEEN;
    List<Block> origin = new ArrayList<>();
    facts.origin().forEach(item -> origin.add(prose(item, type.small(), wide)));
    List<Block> signatures =
        List.of(signature("Planner, date", sign), signature("Setter, date", sign));
    return new CardColumns(new Stack(origin, 1), new Stack(signatures, 4), wide + BETWEEN);
  }

  private Block signature(String label, double wide) {
    return new Signature(
        prose(Item.of(label), type.small(), wide), wide, Math.max(17, 2 * type.body()));
  }

  private Block heading(String text, double wide) {
    return Heading.of(letters, text, type, wide);
  }

  private Block marked(String marker, String text, double wide) {
    return Prose.marked(letters, marker, 1.4 * type.body(), Item.of(text), type.body(), wide);
  }

  private Prose prose(Item item, double size, double wide) {
    return Prose.of(letters, item, size, wide);
  }
}
