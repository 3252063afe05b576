package org.jawroom.tables.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Whether {@code inputs/README.md} is what the descriptors say now. */
class ColumnReferenceTest {

  private static final Path PAGE = Path.of("inputs", "README.md");

  private static final String RENEW =
      PAGE
          + " differs from the descriptors; run: mvn test -Dtest=ColumnReferenceTest"
          + " -Drenew.reference=true";

  @Test
  void page_isGeneratedFromTheDescriptors() throws IOException {
    String text = ColumnReference.text();
    if (Boolean.getBoolean("renew.reference")) {
      Files.writeString(PAGE, text);
    }
    // A checkout on Windows may end lines with CR LF.
    String page = Files.exists(PAGE) ? Files.readString(PAGE).replace("\r\n", "\n") : "";
    assertEquals(text, page, RENEW);
  }

  @Test
  void everyRow_hasFourCells() {
    // GitHub Flavored Markdown Spec, section 4.10: a row ends at the line's end, cells are divided
    // by bars, and a bar within a cell is escaped.
    ColumnReference.text()
        .lines()
        .filter(line -> line.startsWith("|"))
        .forEach(line -> assertEquals(6, line.split("(?<!\\\\)\\|", -1).length, line));
  }

  @Test
  void cell_withABarOrMarkup_isEscaped() {
    assertEquals("a \\| b &lt;i> c", ColumnReference.cell("a | b <i>\nc"));
  }
}
