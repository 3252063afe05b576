package org.jawroom.report;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.advice.Advice;

/**
 * Reads {@code pairings.csv} back. Columns are found by their names; those that are not compared
 * may be missing, and others may be there.
 */
public final class PairingRows {

  private PairingRows() {}

  /** The rows that {@link PairingsCsv} makes of {@code advice}: written, and read back. */
  public static List<PairingRow> of(List<Advice> advice) throws UnreadablePairings {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      PairingsCsv.write(advice, out);
    } catch (IOException failure) {
      throw new IllegalStateException("memory can be written to", failure);
    }
    return read(out.toByteArray());
  }

  /**
   * Reads a whole file: UTF-8 with or without byte order mark, commas, RFC 4180.
   *
   * @return the rows in the order of the file, each pairing once
   */
  public static List<PairingRow> read(byte[] file) throws UnreadablePairings {
    List<CSVRecord> records = records(file);
    if (records.isEmpty()) {
      throw new UnreadablePairings("it is empty");
    }
    CSVRecord header = records.get(0);
    PairingCells.Columns columns = PairingCells.columns(header);
    Map<List<String>, Long> seen = new LinkedHashMap<>();
    List<PairingRow> rows = new ArrayList<>();
    for (CSVRecord cells : records.subList(1, records.size())) {
      if (cells.size() == 1 && cells.get(0).isEmpty()) {
        continue;
      }
      if (cells.size() != header.size()) {
        throw new UnreadablePairings(
            "row "
                + cells.getRecordNumber()
                + " has "
                + cells.size()
                + " cells, but the header has "
                + header.size());
      }
      PairingRow row = new PairingCells(columns, cells).row();
      Long before = seen.putIfAbsent(List.of(row.machine(), row.vise()), cells.getRecordNumber());
      if (before != null) {
        throw new UnreadablePairings(
            "row "
                + cells.getRecordNumber()
                + " tells of the same pairing as row "
                + before
                + ", "
                + PlainText.forTerminal(row.machine() + " x " + row.vise()));
      }
      rows.add(row);
    }
    return rows;
  }

  static List<CSVRecord> records(byte[] file) throws UnreadablePairings {
    String text;
    try {
      // Unlike most ways to decode, this one reports malformed bytes rather than replacing them.
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(file)).toString();
    } catch (CharacterCodingException malformed) {
      throw new UnreadablePairings("it is not UTF-8", malformed);
    }
    String bare = text.startsWith("\ufeff") ? text.substring(1) : text;
    try (CSVParser parser = CSVParser.parse(new StringReader(bare), CSVFormat.RFC4180)) {
      return parser.getRecords();
    } catch (IOException | UncheckedIOException broken) {
      throw new UnreadablePairings("it has quotes that do not pair up", broken);
    }
  }
}
