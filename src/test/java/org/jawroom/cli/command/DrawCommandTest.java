package org.jawroom.cli.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jawroom.fixture.GoldenTables;
import org.jawroom.launch.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DrawCommandTest {
  private static final String EXAMPLE = GoldenTables.of("example").toString();

  @TempDir private Path folder;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int draw(String machine, String vise, Path file) {
    return Main.run(
        new String[] {"draw", EXAMPLE, machine, vise, "-o", file.toString()},
        new PrintWriter(out, true),
        new PrintWriter(err, true));
  }

  @Test
  void draw_pdf_isOnePageWithItsLettersEmbedded() throws Exception {
    Path file = folder.resolve("new/plain.pdf");
    assertEquals(0, draw("roomy", "plain", file), err.toString());
    try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
      assertEquals(1, pdf.getNumberOfPages());
      String text = new PDFTextStripper().getText(pdf);
      assertTrue(text.contains("plain on roomy") && text.contains("rear cover"), text);
      PDResources page = pdf.getPage(0).getResources();
      int fonts = 0;
      for (COSName form : page.getXObjectNames()) {
        PDResources inside =
            ((org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject) page.getXObject(form))
                .getResources();
        for (COSName name : inside.getFontNames()) {
          assertTrue(inside.getFont(name).isEmbedded(), name.getName());
          fonts++;
        }
      }
      assertEquals(2, fonts);
    }
  }

  @Test
  void draw_twice_givesTheSameBytes() throws Exception {
    for (String kind : new String[] {"svg", "pdf", "png"}) {
      Path one = folder.resolve("one." + kind);
      Path other = folder.resolve("other." + kind);
      assertEquals(0, draw("tight", "six inch", one));
      assertEquals(0, draw("tight", "six inch", other));
      assertArrayEquals(Files.readAllBytes(one), Files.readAllBytes(other), kind);
    }
    assertEquals(1500, ImageIO.read(folder.resolve("one.png").toFile()).getWidth());
  }

  @Test
  void draw_noMount_saysSoAndWritesNothing() {
    Path file = folder.resolve("none.svg");
    assertEquals(2, draw("roomy", "wide bolts", file));
    assertEquals(
        "There is no place to draw (no mount): jawroom explain says why.", err.toString().strip());
    assertFalse(Files.exists(file));
  }

  @Test
  void draw_otherEnding_isWrongUse() {
    assertEquals(2, draw("roomy", "plain", folder.resolve("drawing.dxf")));
    assertTrue(err.toString().contains("should end in .svg or .pdf or .png."), err.toString());
  }
}
