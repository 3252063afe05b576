package org.jawroom.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jawroom.drawing.PdfFile;
import org.jawroom.drawing.Picture;
import org.jawroom.drawing.PngFile;
import org.jawroom.drawing.SvgFile;
import org.jawroom.placement.Outcome;
import org.jawroom.shop.Settings;

/** A drawing as a file of the kind that its name asks for. */
public final class DrawingFile {

  /** 200 dots to an inch. */
  private static final double DOTS = 200 / 72.0;

  private static final Map<String, Function<Picture, byte[]>> KINDS =
      Map.of(
          "svg", SvgFile::of,
          "pdf", picture -> PdfFile.of(List.of(picture)),
          "png", picture -> PngFile.of(picture, DOTS));

  private DrawingFile() {}

  /** Whether a file of this name can be made: it ends in .svg, .pdf or .png. */
  public static boolean canWrite(Path file) {
    return KINDS.containsKey(ending(file));
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
      AtomicFiles.publish(file, out -> out.write(bytes.get()));
    }
    return bytes.isPresent();
  }

  private static String ending(Path file) {
    String name = file.getFileName().toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
