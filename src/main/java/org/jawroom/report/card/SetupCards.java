package org.jawroom.report.card;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.jawroom.drawing.file.PdfFaces;
import org.jawroom.drawing.file.PdfFile;
import org.jawroom.drawing.file.Picture;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.report.card.block.Letters;
import org.jawroom.report.card.measure.TapeRange;
import org.jawroom.report.card.statement.CardRow;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.picture.PairingDrawing;
import org.jawroom.report.plan.PlanReports;
import org.jawroom.report.set.SetPicture;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;

/** Writes setup cards, two pages for each vise. */
public final class SetupCards {

  /** Half the page's width, so that lettering keeps the size at which it is drawn. */
  private static final double PICTURE_WIDTH = 258;

  private static final double PICTURE_HEIGHT = 205;

  /** The page's width. */
  private static final double TABLE_WIDTH = 530;

  private static final double TABLE_HEIGHT = 300;

  private SetupCards() {}

  /** Returns the file that {@link #write} writes. */
  public static Destination destination(Path file) {
    return Destination.file(file, ReportMarks.pdf(PlanReports.CARDS_TITLE));
  }

  /**
   * Writes {@code file} completely or not at all.
   *
   * @param settings those the pairings were solved with
   * @param cards at least one
   */
  public static void write(
      Path file, CardPaper paper, Settings settings, List<CardSubject> cards, RunFacts run)
      throws IOException {
    byte[] bytes = bytes(paper, settings, cards, machine -> run);
    AtomicFiles.publish(destination(file), out -> out.write(bytes));
  }

  /**
   * Writes the card of a set: a page of the whole table, then the cards of its vises from left to
   * right.
   *
   * @param set one that fits
   * @param cards of its vises
   */
  public static void write(
      Path file,
      CardPaper paper,
      Settings settings,
      SetOutcome set,
      List<CardSubject> cards,
      RunFacts run)
      throws IOException {
    byte[] bytes = bytes(paper, settings, Optional.of(set), cards, machine -> run);
    AtomicFiles.publish(destination(file), out -> out.write(bytes));
  }

  /**
   * Returns the bytes of the document.
   *
   * @param runs the facts of the run for each machine, in the unit for that machine
   */
  public static byte[] bytes(
      CardPaper paper, Settings settings, List<CardSubject> cards, Function<Machine, RunFacts> runs)
      throws IOException {
    return bytes(paper, settings, Optional.empty(), cards, runs);
  }

  private static byte[] bytes(
      CardPaper paper,
      Settings settings,
      Optional<SetOutcome> set,
      List<CardSubject> cards,
      Function<Machine, RunFacts> runs)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(PlanReports.CARDS_TITLE);
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setLanguage("en");
      PdfFaces faces = new PdfFaces(document);
      Letters letters = new Letters(faces);
      if (set.isPresent()) {
        RunFacts run = runs.apply(set.get().machine());
        Picture picture =
            SetPicture.bare(run.unit(), settings, set.get(), TABLE_WIDTH, TABLE_HEIGHT);
        CardPage.add(
            document, letters, paper, SetPage.of(set.get(), settings, run), faces.form(picture));
      }
      for (CardSubject card : cards) {
        Machine machine = card.machine();
        RunFacts run = runs.apply(machine);
        CardFacts facts = CardFacts.of(card, run);
        information.setProducer("jawroom " + run.toolVersion());
        Picture picture =
            PairingDrawing.bare(
                run.unit(),
                settings,
                card.placed(),
                card.layout(),
                facts.tape().stream().map(TapeRange::best).toList(),
                card.row().map(CardRow::beside).orElse(List.of()),
                PICTURE_WIDTH,
                PICTURE_HEIGHT);
        PDFormXObject form = faces.form(picture);
        CardPage.add(document, letters, paper, facts, form);
      }
      return PdfFile.bytes(document);
    }
  }
}
