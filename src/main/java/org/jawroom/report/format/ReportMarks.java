package org.jawroom.report.format;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jawroom.publish.ReportKind;

/** Recognises each kind of report by its content. */
public final class ReportMarks {

  /** Far longer than any first row or the head of a page. */
  private static final int BEGINNING = 1 << 16;

  /** Number of headings compared: later versions add columns at the end. */
  private static final int HEADINGS = 5;

  /** The properties of a workbook (ECMA-376, part 2). */
  private static final String PROPERTIES = "docProps/core.xml";

  private ReportMarks() {}

  /** A CSV file whose first row begins with the first headings of {@code header}. */
  public static ReportKind csv(List<String> header) {
    return csv(header, row -> false);
  }

  /**
   * As {@link #csv(List)}, or a file whose first row {@code rows} accepts: the files of a partial
   * run have no header row. A spreadsheet may have saved the file with another delimiter.
   */
  public static ReportKind csv(List<String> header, Predicate<List<String>> rows) {
    List<String> headings = header.subList(0, HEADINGS);
    return file -> {
      String text = beginning(file).replaceFirst("^\ufeff", "");
      for (char delimiter : ",;\t".toCharArray()) {
        List<String> row = firstRow(text, delimiter);
        if (row.size() >= HEADINGS
            && (row.subList(0, HEADINGS).equals(headings) || rows.test(row))) {
          return true;
        }
      }
      return false;
    };
  }

  /** A CSV file whose first row begins with the whole of {@code header}. */
  public static ReportKind csvHeader(List<String> header) {
    return file -> {
      String text = beginning(file).replaceFirst("^\ufeff", "");
      for (char delimiter : ",;\t".toCharArray()) {
        List<String> row = firstRow(text, delimiter);
        if (row.size() >= header.size() && row.subList(0, header.size()).equals(header)) {
          return true;
        }
      }
      return false;
    };
  }

  /** A short CSV file whose rows, whatever their delimiter, {@code rows} accepts. */
  public static ReportKind shortCsv(Predicate<List<List<String>>> rows) {
    return file -> {
      if (Files.size(file) > BEGINNING) {
        return false;
      }
      String text = beginning(file).replaceFirst("^\ufeff", "");
      for (char delimiter : ",;\t".toCharArray()) {
        if (rows.test(rows(text, delimiter, Long.MAX_VALUE))) {
          return true;
        }
      }
      return false;
    };
  }

  /** A workbook that jawroom created with the title {@code title}. */
  public static ReportKind workbook(String title) {
    return file -> {
      try (ZipFile zip = new ZipFile(file.toFile())) {
        ZipEntry entry = zip.getEntry(PROPERTIES);
        if (entry == null) {
          return false;
        }
        try (InputStream in = zip.getInputStream(entry)) {
          String properties = text(in);
          return properties.contains("<dc:creator>jawroom</dc:creator>")
              && properties.contains("<dc:title>" + title + "</dc:title>");
        }
      } catch (ZipException noWorkbook) {
        return false;
      }
    };
  }

  /** A PDF that {@code document} accepts. */
  public static ReportKind pdf(Predicate<PDDocument> document) {
    return file -> {
      if (!beginning(file).startsWith("%PDF-")) {
        return false;
      }
      try (PDDocument pdf = Loader.loadPDF(file.toFile())) {
        return document.test(pdf);
      } catch (IOException | RuntimeException damaged) {
        return false;
      }
    };
  }

  /** A PDF with that title. */
  public static ReportKind pdf(String title) {
    return pdf(document -> title.equals(document.getDocumentInformation().getTitle()));
  }

  /** A text file that begins with {@code start} and contains {@code mark} near its beginning. */
  public static ReportKind text(String start, String mark) {
    return file -> {
      String text = beginning(file);
      return text.startsWith(start) && text.contains(mark);
    };
  }

  private static String beginning(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return text(in);
    }
  }

  private static String text(InputStream in) throws IOException {
    return new String(in.readNBytes(BEGINNING), StandardCharsets.UTF_8);
  }

  private static List<String> firstRow(String text, char delimiter) {
    List<List<String>> first = rows(text, delimiter, 1);
    return first.isEmpty() ? List.of() : first.get(0);
  }

  /** At most {@code most} rows; none if the text is no CSV. */
  private static List<List<String>> rows(String text, char delimiter, long most) {
    CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      return parser.stream().limit(most).map(CSVRecord::toList).toList();
    } catch (IOException | UncheckedIOException | IllegalStateException noCsv) {
      return List.of();
    }
  }
}
