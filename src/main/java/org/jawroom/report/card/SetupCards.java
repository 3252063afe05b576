package org.jawroom.report.card;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
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
    byte[] bytes = bytes(paper, settings, List.of(CardStack.of(cards)), machine -> run);
    AtomicFiles.publish(destination(file), out -> out.write(bytes));
  }

  /**
   * Writes the cards of one table.
   *
   * @param stack its cards
   */
  public static void write(
      Path file, CardPaper paper, Settings settings, CardStack stack, RunFacts run)
      throws IOException {
    byte[] bytes = bytes(paper, settings, List.of(stack), machine -> run);
    AtomicFiles.publish(destination(file), out -> out.write(bytes));
  }

  /**
   * Returns the bytes of the document.
   *
   * @param stacks the cards of each table; at least one card in all
   * @param runs the facts of the run for each machine, in the unit for that machine
   */
  public static byte[] bytes(
      CardPaper paper, Settings settings, List<CardStack> stacks, Function<Machine, RunFacts> runs)
      throws IOException {
    try (PDDocument document = new PDDocument()) {
      PDDocumentInformation information = new PDDocumentInformation();
      information.setTitle(PlanReports.CARDS_TITLE);
      document.setDocumentInformation(information);
      document.getDocumentCatalog().setLanguage("en");
      PdfFaces faces = new PdfFaces(document);
      Letters letters = new Letters(faces);
      for (CardStack stack : stacks) {
        if (stack.set().isPresent()) {
          SetOutcome set = stack.set().get();
          RunFacts run = runs.apply(set.machine());
          Picture picture = SetPicture.bare(run.unit(), settings, set, TABLE_WIDTH, TABLE_HEIGHT);
          CardPage.add(
              document, letters, paper, SetPage.of(set, settings, run), faces.form(picture));
        }
        for (CardSubject card : stack.cards()) {
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
                  card.beside(),
                  PICTURE_WIDTH,
                  PICTURE_HEIGHT);
          PDFormXObject form = faces.form(picture);
          CardPage.add(document, letters, paper, facts, form);
        }
      }
      return PdfFile.bytes(document);
    }
  }
}
