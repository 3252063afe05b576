package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.report.card.block.Block;
import org.jawroom.report.card.block.CardColumns;
import org.jawroom.report.card.block.Framed;
import org.jawroom.report.card.block.Heading;
import org.jawroom.report.card.block.Letters;
import org.jawroom.report.card.block.Prose;
import org.jawroom.report.card.block.Signature;
import org.jawroom.report.card.block.Stack;
import org.jawroom.report.card.block.Type;
import org.jawroom.report.card.statement.Item;

/** What the pages of cards have in common, at one size of type. */
record CardBlocks(Letters letters, Type type, double width) {
  static final double BETWEEN = 14;

  /** The title, and at the right the verdict in a frame. */
  Block header(String unit, String words, String verdict) {
    double stampSize = type.title();
    String stamp = letters.printable(verdict);
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
                        "Setup card. Lengths in " + unit + " unless a unit stands beside them."),
                    type.small(),
                    wide),
                Prose.bold(letters, words, type.title(), wide)),
            1);
    return new CardColumns(title, stampBox, width - stampWidth);
  }

  /** Warnings that nobody may overlook. */
  Block alarms(List<String> alarms) {
    double padding = type.body() / 2;
    List<Block> lines = new ArrayList<>();
    for (String alarm : alarms) {
      lines.add(Prose.bold(letters, alarm, type.alarm(), width - 2 * padding));
    }
    return new Framed(new Stack(lines, type.gap()), width, padding, 2, 0.93);
  }

  /** Items under a heading. */
  Block section(String words, List<Item> items, double wide) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading(words, wide));
    items.forEach(item -> blocks.add(prose(item, type.body(), wide)));
    return new Stack(blocks, type.gap());
  }

  /** Steps in order under a heading. */
  Block steps(List<String> steps, double wide) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading("Setting it up", wide));
    IntStream.range(0, steps.size())
        .forEach(i -> blocks.add(marked((i + 1) + ".", steps.get(i), wide)));
    return new Stack(blocks, type.gap());
  }

  Block cautions(List<String> cautions, double wide) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(heading("Mind", wide));
    cautions.forEach(caution -> blocks.add(marked("!", caution, wide)));
    return new Stack(blocks, type.gap());
  }

  /** Where the figures come from, and room for two signatures. */
  Block footer(List<Item> origin) {
    double sign = width * 0.3;
    double wide = width - sign - BETWEEN;
    List<Block> lines = new ArrayList<>();
    origin.forEach(item -> lines.add(prose(item, type.small(), wide)));
    List<Block> signatures =
        List.of(signature("Planner, date", sign), signature("Setter, date", sign));
    return new CardColumns(new Stack(lines, 1), new Stack(signatures, 4), wide + BETWEEN);
  }

  private Block signature(String label, double wide) {
    return new Signature(
        prose(Item.of(label), type.small(), wide), wide, Math.max(17, 2 * type.body()));
  }

  Block heading(String text, double wide) {
    return Heading.of(letters, text, type, wide);
  }

  Prose prose(Item item, double size, double wide) {
    return Prose.of(letters, item, size, wide);
  }

  private Block marked(String marker, String text, double wide) {
    return Prose.marked(letters, marker, 1.4 * type.body(), Item.of(text), type.body(), wide);
  }

  static double height(List<Block> blocks, double gap) {
    return blocks.stream().mapToDouble(Block::height).sum() + gap * blocks.size();
  }
}
