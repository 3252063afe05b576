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
import org.jawroom.drawing.PdfFile;
import org.jawroom.drawing.Picture;
import org.jawroom.drawing.PngFile;
import org.jawroom.drawing.SvgFile;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.shop.Settings;

/** A drawing as a file of the kind that its name asks for. */
public final class DrawingFile {

  /** 200 dots to an inch. */
  private static final double DOTS = 200 / 72.0;

  private static final Map<String, Function<Picture, byte[]>> KINDS =
      Map.of(
          "svg", SvgFile::of,
          "pdf", picture -> PdfFile.of(List.of(picture)),
          "png", picture -> PngMark.on(PngFile.of(picture, DOTS)));

  /** Every version of a drawing says so. */
  private static final String CAUTION = "Does not replace the check on the machine.";

  /** What a drawing of each kind is recognised by. */
  private static final Map<String, ReportKind> MARKS =
      Map.of(
          "svg", ReportMarks.text("<?xml", "<g id='plan-table'>"),
          "pdf", ReportMarks.pdf(DrawingFile::bearsCaution),
          "png", DrawingFile::isMarked);

  private DrawingFile() {}

  /** What {@link #write} writes; the name of the file ends in .svg, .pdf or .png. */
  public static Destination destination(Path file) {
    return Destination.file(file, MARKS.get(ending(file)));
  }

  /**
   * Writes the picture of a pairing; what stood there before is left whole if that fails.
   *
   * @return whether there is a place to draw; if not, nothing is written
   * @throws IOException if the file could not be written
   */
  public static boolean write(Path file, PeopleUnit unit, Settings settings, Outcome outcome)
      throws IOException {
    Optional<byte[]> bytes =
        PairingDrawing.of(unit, settings, outcome).map(KINDS.get(ending(file)));
    if (bytes.isPresent()) {
      AtomicFiles.publish(destination(file), out -> out.write(bytes.get()));
    }
    return bytes.isPresent();
  }

  /** One page of caution and views; other reports say more, and have a title. */
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
