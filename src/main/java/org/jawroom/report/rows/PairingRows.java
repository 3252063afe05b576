package org.jawroom.report.rows;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jawroom.advice.Advice;
import org.jawroom.report.csv.PairingsCsv;

/**
 * Reads {@code pairings.csv} back row by row: UTF-8 with or without byte order mark or UTF-16 with
 * it, RFC 4180, or with semicolons or tabs as spreadsheets save it; rows of blank cells are
 * skipped. Columns are found by name; those not compared may be missing, and there may be others.
 */
public final class PairingRows {
  private static final char BYTE_ORDER_MARK = '\ufeff';

  /** The delimiters accepted. */
  private static final List<Character> SEPARATORS = List.of(',', ';', '\t');

  /** More characters than any header row has, and the lines before it. */
  private static final int HEADER = 1 << 14;

  /** More characters than any row has; an unmatched quote reaches this bound. */
  private static final int LONGEST_ROW = 1 << 20;

  private PairingRows() {}

  /** Receives a row and its number in the file. */
  public interface Taker {
    void take(PairingRow row, long number) throws IOException;
  }

  /** Receives a row, whatever its columns are. */
  public interface CellsTaker {
    void take(PairingCells cells) throws IOException, UnreadablePairings;
  }

  /** Receives the columns, then every row. */
  public interface Table {
    CellsTaker begin(PairingCells.Columns columns) throws UnreadablePairings;
  }

  /** Knows the first lines that are no header row but declare the delimiter. */
  public interface Declaration {

    /**
     * The delimiter that the line declares, empty if it declares none.
     *
     * @throws UnreadablePairings if it is a declaration, but names no delimiter
     */
    Optional<Character> delimiter(String firstLine) throws UnreadablePairings;
  }

  private interface RecordTaker {
    void take(CSVRecord cells) throws IOException, UnreadablePairings;
  }

  /**
   * Passes on the rows that {@link PairingsCsv} writes for {@code advice}: written and parsed
   * again, so that both sides of a comparison have the same rounding.
   */
  public static void of(List<Advice> advice, Taker taker) throws UnreadablePairings, IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    PairingsCsv.write(advice, out);
    read(new ByteArrayInputStream(out.toByteArray()), taker);
  }

  /**
   * Reads to the end and passes on the rows in the order of the file.
   *
   * @throws IOException if {@code in} or {@code taker} throws it
   */
  public static void read(InputStream in, Taker taker) throws UnreadablePairings, IOException {
    readCells(
        in, line -> Optional.empty(), columns -> cells -> taker.take(cells.row(), cells.number()));
  }

  /**
   * The same with all cells of a row, of a file that may declare its delimiter.
   *
   * @throws IOException if {@code in} or {@code table} throws it
   */
  public static void readCells(InputStream in, Declaration declaration, Table table)
      throws UnreadablePairings, IOException {
    PairingCells.Columns[] columns = {null};
    CellsTaker[] taker = {null};
    records(
        in,
        declaration,
        cells -> {
          if (columns[0] == null) {
            columns[0] = PairingCells.columns(cells);
            taker[0] = table.begin(columns[0]);
          } else {
            taker[0].take(new PairingCells(columns[0], cells));
          }
        });
    if (columns[0] == null) {
      throw new UnreadablePairings("it is empty");
    }
  }

  /** All records of a file held in memory, without rows of blank cells. */
  public static List<CSVRecord> records(byte[] file, Declaration declaration)
      throws UnreadablePairings {
    List<CSVRecord> records = new ArrayList<>();
    try {
      records(new ByteArrayInputStream(file), declaration, records::add);
    } catch (IOException failure) {
      throw new UncheckedIOException("reading from memory failed", failure);
    }
    return records;
  }

  private static void records(InputStream in, Declaration declaration, RecordTaker taker)
      throws UnreadablePairings, IOException {
    // A decoder from newDecoder() reports malformed bytes; most other ways to decode replace them.
    BufferedInputStream bytes = new BufferedInputStream(in);
    BufferedReader text =
        new BufferedReader(new InputStreamReader(bytes, charset(bytes).newDecoder()));
    RowReader rows = new RowReader(text);
    try {
      String start = start(text);
      String firstLine = start.lines().findFirst().orElse("");
      Optional<Character> declared = declaration.delimiter(firstLine);
      if (declared.isPresent()) {
        // Its end remains as a blank row, so that rows are counted from it.
        text.skip(firstLine.length());
      }
      char separator = declared.orElseGet(() -> separator(start));
      CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).get();
      try (CSVParser parser = CSVParser.parse(rows, format)) {
        for (Iterator<CSVRecord> all = parser.iterator(); all.hasNext(); ) {
          CSVRecord cells = all.next();
          rows.begin();
          if (!isBlank(cells)) {
            taker.take(cells);
          }
        }
      }
    } catch (UncheckedIOException wrapped) {
      throw refusal(wrapped.getCause());
    } catch (CharacterCodingException | CSVException | RowReader.TooLong broken) {
      throw refusal(broken);
    }
  }

  /** That of the byte order mark at the start, which stays there. */
  private static Charset charset(BufferedInputStream bytes) throws IOException {
    bytes.mark(2);
    int first = bytes.read();
    int second = bytes.read();
    bytes.reset();
    if (first == 0xFF && second == 0xFE) {
      return StandardCharsets.UTF_16LE;
    }
    return first == 0xFE && second == 0xFF ? StandardCharsets.UTF_16BE : StandardCharsets.UTF_8;
  }

  private static boolean isBlank(CSVRecord cells) {
    for (int i = 0; i < cells.size(); i++) {
      if (!cells.get(i).isBlank()) {
        return false;
      }
    }
    return true;
  }

  /** Skips a byte order mark and looks ahead, as far as a header row may reach. */
  private static String start(BufferedReader text) throws IOException {
    text.mark(1);
    if (text.read() != BYTE_ORDER_MARK) {
      text.reset();
    }
    text.mark(HEADER);
    char[] start = new char[HEADER];
    int read = Math.max(0, text.read(start, 0, HEADER));
    text.reset();
    return new String(start, 0, read);
  }

  /** The delimiter of which the first line that is not blank has most. */
  private static char separator(String start) {
    String line = start.lines().filter(one -> !one.isBlank()).findFirst().orElse("");
    char most = SEPARATORS.get(0);
    for (char one : SEPARATORS) {
      most = count(line, one) > count(line, most) ? one : most;
    }
    return most;
  }

  private static long count(String line, char one) {
    return line.chars().filter(letter -> letter == one).count();
  }

  private static UnreadablePairings refusal(IOException broken) throws IOException {
    if (broken instanceof CharacterCodingException) {
      return new UnreadablePairings("it is not UTF-8; save it as CSV in UTF-8", broken);
    }
    if (broken instanceof CSVException || broken instanceof RowReader.TooLong) {
      return new UnreadablePairings("it has quotes that do not pair up", broken);
    }
    throw broken;
  }

  /** Bounds the characters read for one row. */
  private static final class RowReader extends FilterReader {

    /** The bound was reached before the row's end. */
    private static final class TooLong extends IOException {
      private static final long serialVersionUID = 1L;
    }

    private int letters;

    RowReader(Reader in) {
      super(in);
    }

    /** Resets the count for the next row. */
    void begin() {
      letters = 0;
    }

    @Override
    public int read() throws IOException {
      count(1);
      return super.read();
    }

    @Override
    public int read(char[] text, int offset, int length) throws IOException {
      int read = super.read(text, offset, length);
      count(read);
      return read;
    }

    private void count(int read) throws IOException {
      letters += read;
      if (letters > LONGEST_ROW) {
        throw new TooLong();
      }
    }
  }
}
