package org.jawroom.report.picture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.drawing.file.PdfFile;
import org.jawroom.drawing.file.Picture;
import org.jawroom.drawing.file.PngFile;
import org.jawroom.drawing.file.SvgFile;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.shop.Settings;

/** Writes a drawing in the format that the file name's extension selects. */
public final class DrawingFile {

  /** 200 dots per inch. */
  private static final double DOTS = 200 / 72.0;

  private static final Map<String, Function<Picture, byte[]>> KINDS =
      Map.of(
          "svg", SvgFile::of,
          "pdf", picture -> PdfFile.of(List.of(picture)),
          "png", picture -> PngMark.on(PngFile.of(picture, DOTS)));

  /** Every version of a drawing contains this text. */
  private static final String CAUTION = "Does not replace the check on the machine.";

  /** The content by which a drawing of each format is recognised. */
  private static final Map<String, ReportKind> MARKS =
      Map.of(
          "svg", ReportMarks.text("<?xml", "<g id='plan-table'>"),
          "pdf", ReportMarks.pdf(DrawingFile::bearsCaution),
          "png", DrawingFile::isMarked);

  private DrawingFile() {}

  /** Returns the file that {@link #write} writes; its name ends in .svg, .pdf or .png. */
  public static Destination destination(Path file) {
    return Destination.file(file, MARKS.get(ending(file)));
  }

  /**
   * Writes the picture of a pairing; on failure the previous file stays unchanged.
   *
   * @return whether there is a place to draw; if not, nothing is written
   * @throws IOException if the file could not be written
   */
  public static boolean write(Path file, PeopleUnit unit, Settings settings, SolvedPairing solved)
      throws IOException {
    Optional<Picture> picture =
        solved.layout().map(layout -> PairingDrawing.of(unit, settings, solved.outcome(), layout));
    if (picture.isPresent()) {
      write(file, picture.get());
    }
    return picture.isPresent();
  }

  /**
   * Writes a picture; on failure the previous file stays unchanged.
   *
   * @throws IOException if the file could not be written
   */
  public static void write(Path file, Picture picture) throws IOException {
    byte[] bytes = KINDS.get(ending(file)).apply(picture);
    AtomicFiles.publish(destination(file), out -> out.write(bytes));
  }

  /**
   * Recognises a drawing: one page with the caution and the views. Other reports say more and have
   * a title.
   */
  private static boolean bearsCaution(PDDocument document) {
    try {
      return document.getDocumentInformation().getTitle() == null
          && document.getNumberOfPages() == 1
          && new PDFTextStripper().getText(document).replaceAll("\\s+", " ").contains(CAUTION);
    } catch (IOException unreadable) {
      return false;
    }
  }

  private static boolean isMarked(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return PngMark.isOn(in.readNBytes(PngMark.LENGTH));
    }
  }

  private static String ending(Path file) {
    String name = file.getFileName().toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
