package org.jawroom.report.card;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jawroom.report.card.block.Block;
import org.jawroom.report.card.block.Letters;
import org.jawroom.report.card.block.Pen;
import org.jawroom.report.card.block.Stack;
import org.jawroom.report.card.block.Type;

/**
 * Fits a card on two pages, one sheet: in the largest type possible; names are shortened only if
 * the smallest type does not suffice.
 */
final class CardPage {
  private static final double MARGIN = 28;
  private static final double GAP = 6;

  /** The first bound exceeds every permitted name, so it shortens nothing. */
  static final List<Integer> NAME_LENGTHS = List.of(100, 40, 20);

  private CardPage() {}

  static void add(
      PDDocument document, Letters letters, CardPaper paper, CardFacts facts, PDFormXObject picture)
      throws IOException {
    double width = paper.width() - 2 * MARGIN;
    double room = paper.height() - 2 * MARGIN;
    for (List<Block> sections : fitted(letters, facts, picture, width, room)) {
      add(document, letters, paper, sections);
    }
  }

  /** Adds the first page of the card of a set. */
  static void add(
      PDDocument document, Letters letters, CardPaper paper, SetPage set, PDFormXObject picture)
      throws IOException {
    double width = paper.width() - 2 * MARGIN;
    double room = paper.height() - 2 * MARGIN;
    add(document, letters, paper, set.sections(letters, picture, width, room, GAP));
  }

  private static void add(
      PDDocument document, Letters letters, CardPaper paper, List<Block> sections)
      throws IOException {
    PDPage page = new PDPage(paper.sheet());
    document.addPage(page);
    double room = paper.height() - 2 * MARGIN;
    double used = sections.stream().mapToDouble(Block::height).sum();
    // Spare height widens the gaps between the sections, up to a limit.
    double gap = Math.min((room - used) / (sections.size() - 1), 3 * GAP);
    try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
      new Stack(sections, gap).draw(new Pen(stream, letters, paper.height()), MARGIN, MARGIN);
    }
  }

  /** The sections of both pages, in one size of type. */
  private static List<List<Block>> fitted(
      Letters letters, CardFacts facts, PDFormXObject picture, double width, double room) {
    for (int longest : NAME_LENGTHS) {
      CardFacts cut = facts.withNames(longest);
      for (double size : Type.sizes().toArray()) {
        CardLayout layout = new CardLayout(letters, cut, new Type(size), width);
        List<Block> setUp = layout.setUp(picture, room, GAP);
        List<Block> check = layout.check(room, GAP);
        if (!setUp.isEmpty() && !check.isEmpty()) {
          return List.of(setUp, check);
        }
      }
    }
    throw new IllegalStateException(
        "a card does not fit on its pages: " + facts.vise() + " on " + facts.machine());
  }
}
