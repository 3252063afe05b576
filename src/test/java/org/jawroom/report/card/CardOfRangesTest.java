package org.jawroom.report.card;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.cli.CommandRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The gaps that a card expects where readings are known within bounds: the shop worked by hand in
 * {@code checks/hand}, 100 from the base to the rear cover at the recommended place.
 */
class CardOfRangesTest {
  private static final Path HAND = Path.of("src/test/resources/org/jawroom/checks/hand");

  @TempDir private Path folder;

  @Test
  void expected_ofARangedGap_hasNoUpperEnd() throws Exception {
    String known = card("60");
    assertTrue(known.contains("99.0 to 101.0"), known);
    assertFalse(known.contains("or more ± "), known);

    String ranged = card("60..80");
    assertTrue(ranged.contains("99.0 or more ± 1"), ranged);
    assertFalse(ranged.contains("99.0 to 101.0"), ranged);
  }

  private String card(String rearGap) throws Exception {
    Path tables = Files.createTempDirectory(folder, "tables");
    Files.copy(HAND.resolve("vises.csv"), tables.resolve("vises.csv"));
    Files.writeString(
        tables.resolve("machines.csv"),
        Files.readString(HAND.resolve("machines.csv"))
            .replace("100,60,none,none", "100," + rearGap + ",none,none"));
    Path file = folder.resolve("card.pdf");
    CommandRun run =
        CommandRun.of("card", tables.toString(), "hand mill", "hand vise", "-o", file.toString());
    assertTrue(run.status() == 0, run.err());
    try (PDDocument document = Loader.loadPDF(file.toFile())) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
