package org.jawroom.report.card;

import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;

/** A page as a reader of PDFs finds it: its text, and where each letter stands. */
record PrintedPage(String text, List<TextPosition> letters, PDRectangle sheet, List<PDFont> fonts) {

  static byte[] bytes(CardPaper paper, List<CardSubject> explanations, RunFacts run)
      throws IOException {
    return SetupCards.bytes(
        paper, Settings.DEFAULTS, List.of(CardStack.of(explanations)), machine -> run);
  }

  static List<PrintedPage> of(byte[] pdf) throws IOException {
    List<PrintedPage> pages = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int number = 1; number <= document.getNumberOfPages(); number++) {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper stripper =
            new PDFTextStripper() {
              @Override
              protected void processTextPosition(TextPosition letter) {
                letters.add(letter);
                super.processTextPosition(letter);
              }
            };
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        String text = stripper.getText(document);
        PDPage page = document.getPage(number - 1);
        List<PDFont> fonts = new ArrayList<>();
        for (COSName name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name));
        }
        pages.add(new PrintedPage(text, letters, page.getMediaBox(), fonts));
      }
    }
    return pages;
  }

  /** Where something is printed nearer to an edge of its page than 24 points, outlines too. */
  static List<String> inkInTheMargins(byte[] pdf) throws IOException {
    List<String> ink = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        BufferedImage image = new PDFRenderer(document).renderImage(page);
        Rectangle inside =
            new Rectangle(24, 24, image.getWidth() - 2 * 24, image.getHeight() - 2 * 24);
        for (int y = 0; y < image.getHeight(); y++) {
          for (int x = 0; x < image.getWidth(); x++) {
            if (!inside.contains(x, y) && (image.getRGB(x, y) & 0xFFFFFF) != 0xFFFFFF) {
              ink.add("page " + page + ": " + x + ", " + y);
            }
          }
        }
      }
    }
    return ink;
  }

  /** The text as one line, whatever its breaks. */
  String words() {
    return text.replaceAll("\\s+", " ").strip();
  }

  /** Where a letter stands; its top about that of a capital. */
  private record Spot(String letter, double left, double right, double top, double foot) {
    static Spot of(TextPosition letter) {
      return new Spot(
          letter.getUnicode(),
          letter.getXDirAdj(),
          letter.getXDirAdj() + letter.getWidthDirAdj(),
          letter.getYDirAdj() - 0.7 * letter.getYScale(),
          letter.getYDirAdj());
    }

    /** By more than a hair: the next letter of a word begins where the last ends. */
    boolean overlaps(Spot other) {
      return Math.min(right, other.right) - Math.max(left, other.left) > 0.6
          && Math.min(foot, other.foot) - Math.max(top, other.top) > 0.6;
    }
  }

  /** Letters that stand outside the sheet, or over another letter. */
  List<String> misplaced() {
    List<String> found = new ArrayList<>();
    List<Spot> spots =
        letters.stream()
            .filter(letter -> !letter.getUnicode().isBlank())
            .map(Spot::of)
            .sorted(Comparator.comparingDouble(Spot::foot))
            .toList();
    for (int i = 0; i < spots.size(); i++) {
      Spot one = spots.get(i);
      if (one.left < 0
          || one.right > sheet.getWidth()
          || one.top < 0
          || one.foot > sheet.getHeight()) {
        found.add(one + " is off the sheet");
      }
      // No letter is higher than this.
      for (int j = i + 1; j < spots.size() && spots.get(j).foot - one.foot < 30; j++) {
        if (one.overlaps(spots.get(j))) {
          found.add(one + " is over " + spots.get(j));
        }
      }
    }
    return found;
  }
}
