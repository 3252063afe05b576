package org.jawroom.report.card;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.format.PeopleUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every card there is, as a reader of PDFs finds it. */
class SetupCardsTest {
  private static List<CardSubject> all;

  @BeforeAll
  static void explainAll() throws Exception {
    List<CardSubject> explained = new ArrayList<>();
    for (Path folder : shops()) {
      explained.addAll(Explained.all(Explained.shop(folder)));
    }
    all = List.copyOf(explained);
  }

  /** Every third on either paper, and every third on none: drawing them takes long. */
  @ParameterizedTest
  @CsvSource({"A4, MM, 0", "LETTER, INCH, 1"})
  void write_everyThirdPairing_twoPagesEachWithNothingMisplaced(
      CardPaper paper, PeopleUnit unit, int first) throws Exception {
    List<CardSubject> some =
        IntStream.range(0, all.size()).filter(i -> i % 3 == first).mapToObj(all::get).toList();
    assertTrue(some.size() > 20, "pairings: " + some.size());
    List<PrintedPage> pages = PrintedPage.of(PrintedPage.bytes(paper, some, Explained.run(unit)));
    assertEquals(2 * some.size(), pages.size());
    for (int i = 0; i < pages.size(); i++) {
      Outcome outcome = some.get(i / 2).outcome();
      PrintedPage page = pages.get(i);
      String name = outcome.vise().name() + " on " + outcome.machine().name();
      assertTrue(page.words().contains(name), name);
      assertTrue(
          page.words()
              .contains(i % 2 == 0 ? "Tapping it square" : "Gaps to check before the first run"),
          name);
      assertEquals(List.of(), page.misplaced(), name);
      assertEquals(paper.width(), page.sheet().getWidth(), 0.01);
      assertTrue(page.fonts().size() >= 1, name);
      assertTrue(page.fonts().stream().allMatch(PDFont::isEmbedded), name);
      // The drawing, on the left, is a picture of half the size.
      assertTrue(
          page.letters().stream()
              .filter(letter -> letter.getXDirAdj() > paper.width() / 2)
              .allMatch(letter -> letter.getYScale() >= 6.99),
          name);
    }
  }

  private static List<Path> shops() throws Exception {
    try (Stream<Path> golden = Files.list(Explained.golden("example").getParent())) {
      return Stream.concat(
              Stream.of(Path.of("inputs/demo")), golden.filter(Files::isDirectory).sorted())
          .toList();
    }
  }

  @Test
  void write_sameInputs_sameBytes() throws Exception {
    List<CardSubject> some = all.subList(0, 4);
    byte[] once = PrintedPage.bytes(CardPaper.A4, some, Explained.run(PeopleUnit.MM));
    assertArrayEquals(once, PrintedPage.bytes(CardPaper.A4, some, Explained.run(PeopleUnit.MM)));
  }

  @ParameterizedTest
  @CsvSource({
    "A4, W",
    "LETTER, W",
    "A4, i",
    "LETTER, 漢",
    "LETTER, W ",
    "A4, \u202Eא",
    "A4, e\u0301\u0302",
    "LETTER, क्षि",
    "A4, \uD83D\uDC68\u200D\uD83D\uDC69",
    "A4, \uE000",
    "A4, \uD840\uDC00"
  })
  void write_namesOfAHundredLetters_stillTwoPages(CardPaper paper, String letter) throws Exception {
    LongNames names = new LongNames(letter);
    byte[] pdf =
        PrintedPage.bytes(paper, List.of(names.explained()), Explained.run(PeopleUnit.INCH));
    List<PrintedPage> pages = PrintedPage.of(pdf);
    assertEquals(2, pages.size());
    assertEquals(List.of(), pages.get(0).misplaced());
    assertEquals(List.of(), pages.get(1).misplaced());
    assertTrue(pages.get(0).words().contains("Setting it up"));
    assertEquals(List.of(), PrintedPage.inkInTheMargins(pdf));
  }

  @Test
  void write_lettersThatSteerOrAreLacking_areDots() throws Exception {
    LongNames names = new LongNames("a\u202Eb\uE000\u0007c\uE001");
    byte[] pdf =
        PrintedPage.bytes(CardPaper.A4, List.of(names.explained()), Explained.run(PeopleUnit.MM));
    PrintedPage page = PrintedPage.of(pdf).get(0);
    assertTrue(page.words().contains("a·b··c·"), page.words());
    assertFalse(page.text().contains("\u202E"));
  }
}
