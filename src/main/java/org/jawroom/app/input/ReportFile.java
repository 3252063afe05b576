package org.jawroom.app.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.rows.PairingRows;
import org.jawroom.report.rows.UnreadablePairings;
import org.jawroom.tables.source.csv.CsvDelimiter;
import org.jawroom.tables.source.grid.FileTrouble;
import org.jawroom.tables.source.grid.UnreadableInput;

/** The pairings of an earlier run as a file: {@code pairings.csv}, or the folder that holds it. */
public final class ReportFile {
  private ReportFile() {}

  /** The file itself, existing or not. */
  public static Path in(Path path) {
    return Files.isDirectory(path) ? path.resolve(PairingsCsv.FILE) : path;
  }

  /**
   * Reads it from the first row to the last.
   *
   * @throws UnreadableInput with one line, if it cannot be read or is no such report
   * @throws IOException if {@code table} throws it
   */
  public static void read(Path file, PairingRows.Table table) throws UnreadableInput, IOException {
    try (InputStream in = opened(file)) {
      PairingRows.readCells(in, ReportFile::delimiter, table);
    } catch (UnreadablePairings wrong) {
      throw refusal(file, wrong);
    }
  }

  /** The one line that refuses the file. */
  public static UnreadableInput refusal(Path file, UnreadablePairings why) {
    return new UnreadableInput(file + " is no report of jawroom's: " + why.getMessage(), why);
  }

  /**
   * The delimiter that the first line of a report declares, as that of a table may; empty if it is
   * the header row.
   */
  public static Optional<Character> delimiter(String firstLine) throws UnreadablePairings {
    if (!CsvDelimiter.isDeclared(firstLine)) {
      return Optional.empty();
    }
    Optional<Character> declared = CsvDelimiter.declared(firstLine);
    if (declared.isEmpty()) {
      throw new UnreadablePairings("row 1 " + CsvDelimiter.NOT_NAMED);
    }
    return declared;
  }

  private static InputStream opened(Path file) throws UnreadableInput {
    try {
      return Files.newInputStream(file);
    } catch (IOException refused) {
      throw new UnreadableInput(
          file + " could not be read: " + FileTrouble.reason(refused), refused);
    }
  }
}
