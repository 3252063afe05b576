package org.jawroom.report.card;

import java.io.ByteArrayOutputStream;
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
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jawroom.advice.Explanation;
import org.jawroom.report.RunFacts;

/** A page as a reader of PDFs finds it: its text, and where each letter stands. */
record PrintedPage(String text, List<TextPosition> letters, PDRectangle sheet, List<PDFont> fonts) {

  static byte[] bytes(CardPaper paper, List<Explanation> explanations, RunFacts run) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SetupCards.write(out, paper, explanations, run);
    return out.toByteArray();
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

  /** The text as one line, whatever its breaks. */
  String words() {
    return text.replaceAll("\\s+", " ").strip();
  }

  /** Letters that stand outside the sheet, or over another letter. */
  List<String> misplaced() {
    List<String> found = new ArrayList<>();
    List<TextPosition> seen = letters.stream()
        .filter(letter -> !letter.getUnicode().isBlank())
        .sorted(Comparator.comparingDouble(TextPosition::getYDirAdj))
        .toList();
    for (int i = 0; i < seen.size(); i++) {
      TextPosition one = seen.get(i);
      if (one.getXDirAdj() < 0 || right(one) > sheet.getWidth() || top(one) < 0
          || one.getYDirAdj() > sheet.getHeight()) {
        found.add(one.getUnicode() + " off the sheet");
      }
      for (int j = i + 1; j < seen.size() && top(seen.get(j)) < one.getYDirAdj() - 0.5
          || j < seen.size() && seen.get(j).getYDirAdj() - one.getYDirAdj() < 30; j++) {
        if (overlap(one, seen.get(j))) {
          found.add(one.getUnicode() + " over " + seen.get(j).getUnicode() + " at " + one.getXDirAdj() + ", "
              + one.getYDirAdj());
        }
      }
    }
    return found;
  }

  /** By more than a hair: the next letter of a word begins where the last ends. */
  private static boolean overlap(TextPosition one, TextPosition other) {
    return Math.min(right(one), right(other)) - Math.max(one.getXDirAdj(), other.getXDirAdj()) > 0.6
        && Math.min(one.getYDirAdj(), other.getYDirAdj()) - Math.max(top(one), top(other)) > 0.6;
  }

  private static double right(TextPosition letter) {
    return letter.getXDirAdj() + letter.getWidthDirAdj();
  }

  /** Of a capital, about. */
  private static double top(TextPosition letter) {
    return letter.getYDirAdj() - 0.7 * letter.getFontSizeInPt();
  }
}
