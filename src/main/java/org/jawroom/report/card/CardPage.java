package org.jawroom.report.card;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * Fits a card on one page: in the largest type possible; names are shortened only if the smallest
 * type does not suffice.
 */
final class CardPage {
  private static final double MARGIN = 28;
  private static final double GAP = 6;

  /** The first bound exceeds every permitted name, so it shortens nothing. */
  private static final List<Integer> NAME_LENGTHS = List.of(100, 40, 20);

  private CardPage() {}

  static void add(
      PDDocument document, Letters letters, CardPaper paper, CardFacts facts, PDFormXObject picture)
      throws IOException {
    double width = paper.width() - 2 * MARGIN;
    double room = paper.height() - 2 * MARGIN;
    PDPage page = new PDPage(paper.sheet());
    document.addPage(page);
    List<Block> sections = fitted(letters, facts, picture, width, room);
    double used = sections.stream().mapToDouble(Block::height).sum();
    // Spare height widens the gaps between the sections, up to a limit.
    double gap = Math.min((room - used) / (sections.size() - 1), 3 * GAP);
    try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
      new Stack(sections, gap).draw(new Pen(stream, letters, paper.height()), MARGIN, MARGIN);
    }
  }

  private static List<Block> fitted(
      Letters letters, CardFacts facts, PDFormXObject picture, double width, double room) {
    for (int longest : NAME_LENGTHS) {
      CardFacts cut = facts.withNames(longest);
      for (double size : Type.sizes().toArray()) {
        List<Block> sections =
            new CardLayout(letters, cut, new Type(size), width).sections(picture, room, GAP);
        if (!sections.isEmpty()) {
          return sections;
        }
      }
    }
    throw new IllegalStateException(
        "a card does not fit on its page: " + facts.vise() + " on " + facts.machine());
  }
}
