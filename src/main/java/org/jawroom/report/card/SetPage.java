package org.jawroom.report.card;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.report.card.block.Block;
import org.jawroom.report.card.block.CardGrid;
import org.jawroom.report.card.block.Letters;
import org.jawroom.report.card.block.PictureFrame;
import org.jawroom.report.card.block.Prose;
import org.jawroom.report.card.block.Stack;
import org.jawroom.report.card.block.Type;
import org.jawroom.report.card.statement.Item;
import org.jawroom.report.card.statement.Origin;
import org.jawroom.report.card.statement.ShortNames;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.set.SetWords;
import org.jawroom.report.wording.Cautions;
import org.jawroom.report.wording.LookedFor;
import org.jawroom.report.wording.place.TapeWords;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;

/**
 * The first page of the card of a set: the whole table with every vise on it, each with its tape
 * measures. The pages of each vise follow.
 *
 * @param spacing the least distance between two vises
 */
record SetPage(SetOutcome set, SetWords words, RunFacts run, long spacing) {
  private static final double PADDING = 2.5;
  private static final double LEAST_PICTURE = 180;

  /** The widths of all columns but the second, in multiples of the body size. */
  private static final List<Double> OTHERS = List.of(1.8, 12.5, 12.5, 10.5, 5.0, 5.0);

  static SetPage of(SetOutcome set, Settings settings, RunFacts run) {
    return new SetPage(set, new SetWords(run.unit(), settings), run, settings.spacing());
  }

  /**
   * The sections from top to bottom in the largest type possible.
   *
   * @throws IllegalStateException if they do not fit
   */
  List<Block> sections(
      Letters letters, PDFormXObject picture, double width, double room, double gap) {
    for (int longest : CardPage.NAME_LENGTHS) {
      for (double size : Type.sizes().toArray()) {
        CardBlocks blocks = new CardBlocks(letters, new Type(size), width);
        List<Block> all = new ArrayList<>();
        all.add(header(blocks, longest));
        List<String> alarms = alarms();
        if (!alarms.isEmpty()) {
          all.add(blocks.alarms(alarms));
        }
        all.add(grid(blocks, longest));
        all.add(blocks.steps(steps(), width));
        all.add(blocks.cautions(cautions(), width));
        all.add(blocks.footer(List.of(Origin.files(run))));
        double left = room - CardBlocks.height(all, gap) - gap;
        if (left >= LEAST_PICTURE) {
          double high = width * picture.getBBox().getHeight() / picture.getBBox().getWidth();
          all.add(alarms.isEmpty() ? 1 : 2, new PictureFrame(picture, width, Math.min(left, high)));
          return all;
        }
      }
    }
    throw new IllegalStateException("a card does not fit on its page: " + set.set().name());
  }

  private Block header(CardBlocks blocks, int longest) {
    return blocks.header(
        run.unit().plural(),
        "Set "
            + ShortNames.cut(set.set().name(), longest)
            + " on "
            + ShortNames.cut(set.machine().name(), longest),
        words.stamp(set));
  }

  private List<String> alarms() {
    List<String> alarms = new ArrayList<>();
    if (SetWords.isInDoubt(set)) {
      alarms.add(
          "NOT A GO: gaps found on the machine say that a reading may be wrong. Put the tables"
              + " right, make a new card. Do not run on this one.");
    }
    words.minds(set).forEach(mind -> alarms.add("Mind: " + mind + "."));
    return alarms;
  }

  private Block grid(CardBlocks blocks, int longest) {
    Type type = blocks.type();
    List<Double> widths = new ArrayList<>(OTHERS.stream().map(w -> w * type.body()).toList());
    widths.add(1, blocks.width() - widths.stream().mapToDouble(Double::doubleValue).sum());
    List<List<Block>> rows = new ArrayList<>();
    rows.add(
        cells(
            List.of(
                "",
                "Vise",
                "From the left edge",
                "From the front edge",
                "Held by",
                "Margin",
                "To next"),
            widths,
            (text, wide) -> Prose.bold(blocks.letters(), text, type.small(), wide)));
    for (int at = 0; at < set.stands().size(); at++) {
      rows.add(
          cells(
              row(at, longest),
              widths,
              (text, wide) -> blocks.prose(Item.of(text), type.body(), wide)));
    }
    Block heading =
        blocks.heading(
            "Where each stands, from left to right (slots along y: front to back)", blocks.width());
    return new Stack(List.of(heading, new CardGrid(widths, rows, PADDING)), type.gap());
  }

  private static List<Block> cells(
      List<String> texts, List<Double> widths, BiFunction<String, Double, Block> cell) {
    List<Block> cells = new ArrayList<>();
    for (int column = 0; column < texts.size(); column++) {
      cells.add(cell.apply(texts.get(column), widths.get(column) - 2 * PADDING));
    }
    return cells;
  }

  private List<String> row(int at, int longest) {
    SetOutcome.Stand stand = set.stands().get(at);
    Recommendation place = stand.place();
    PeopleUnit unit = run.unit();
    TapeWords tape = new TapeWords(unit, set.machine(), stand.vise());
    List<String> edges =
        tape.edges(place.handleTo(), place.x(), place.y(), set.least().orElse(Long.MAX_VALUE));
    return List.of(
        String.valueOf(at + 1),
        ShortNames.cut(stand.vise().name(), longest) + ", handle to the " + place.handleTo().word(),
        edges.get(0),
        edges.get(1),
        ShortNames.cut(place.mount(), longest) + ": " + tape.fastening(place),
        place.margin().isPresent() ? unit.brief(place.margin().getAsLong(), Rounding.DOWN) : "–",
        stand.nextGap().isPresent() ? unit.brief(stand.nextGap().getAsLong(), Rounding.DOWN) : "");
  }

  private List<String> steps() {
    return List.of(
        "Lock the machine out. Clean the table and the undersides of the vises.",
        "Set each vise down as its own card says, no. 1 first; do not tighten yet.",
        "Tape each from the table's edges, tap it square, tighten, tape it again."
            + (set.set().members().stream().anyMatch(member -> member.vise().isTurned())
                ? " Swing one at an angle last; with its jaws square it may not clear its"
                    + " neighbours: set those down after."
                : ""),
        "Open all jaws fully: leave "
            + run.unit().brief(spacing, Rounding.UP)
            + " or more between any two vises and what sticks out of them.",
        "Make the checks on the card of every vise, all vises in place.");
  }

  private List<String> cautions() {
    List<String> lines = new ArrayList<>();
    lines.add(Cautions.BRIEF);
    lines.add(
        "Each vise is bare and over its full opening: parts, stops and tools that reach over to the"
            + " next vise are yours to watch.");
    List<String> not = LookedFor.not(set.machine());
    if (!not.isEmpty()) {
      lines.add("Nobody looked for these on this machine: " + String.join(", ", not) + ".");
    }
    return lines;
  }
}
