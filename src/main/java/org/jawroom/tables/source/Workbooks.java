package org.jawroom.tables.source;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.filesystem.FileMagic;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.util.XMLHelper;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.apache.poi.xssf.eventusermodel.XSSFReader.SheetIterator;
import org.jawroom.tables.schema.TableSpec;
import org.xml.sax.Attributes;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;
import org.xml.sax.helpers.DefaultHandler;

/** An XLSX workbook, one sheet a table, read by events: no sheet is ever held as objects. */
final class Workbooks {
  private Workbooks() {}

  /** Whatever the workbook calls itself: never run, and nothing is read from them. */
  private static final String MACROS = "application/vnd.ms-office.vbaProject";

  static Source read(Path file, FaultList faults) throws UnreadableInput {
    byte[] bytes = FileRead.bytes(file);
    refuseOtherFormats(file, bytes);
    Source.Gathering gathering = new Source.Gathering(faults);
    List<LeftAlone> leftAlone = new ArrayList<>();
    Map<String, TableSpec> nearly = new LinkedHashMap<>();
    try (BoundedZip zip = new BoundedZip(bytes);
        OPCPackage parts = OPCPackage.open(zip)) {
      XSSFReader workbook = new XSSFReader(parts);
      SharedTexts texts = new SharedTexts();
      try (InputStream shared = workbook.getSharedStringsData()) {
        if (shared != null) {
          parse(shared, texts);
        }
      }
      SheetStyles styles = new SheetStyles();
      try (InputStream data = workbook.getStylesData()) {
        if (data != null) {
          parse(data, styles);
        }
      }
      boolean from1904 = from1904(workbook);
      SheetIterator sheets = workbook.getSheetIterator();
      while (sheets.hasNext()) {
        try (InputStream sheet = sheets.next()) {
          String name = sheets.getSheetName();
          String origin = "sheet " + name;
          TableName meant = TableName.ofSheet(name);
          switch (meant.kind()) {
            case TABLE -> {
              TableSpec table = meant.table().orElseThrow();
              if (gathering.isFirst(table, origin)) {
                SheetTable rows =
                    new SheetTable(table, name, texts, styles, from1904, gathering.room, faults);
                parse(sheet, rows);
                Optional<Grid> grid = rows.grid();
                gathering.add(table, grid, rows.isWhole());
              }
            }
            case NEARLY, SPARE -> nearly.put(origin, meant.table().orElseThrow());
            case LATER -> leftAlone.add(LeftAlone.later(origin));
            case OTHER -> leftAlone.add(LeftAlone.noTable(origin));
          }
        }
      }
      if (!parts.getPartsByContentType(MACROS).isEmpty()) {
        leftAlone.add(LeftAlone.noTable("macros"));
      }
      nearly.forEach(
          (origin, table) ->
              gathering.refuseNearly(table, origin, "rename it to " + table.tableName()));
    } catch (IOException | OpenXML4JException | SAXException | ParserConfigurationException e) {
      throw damaged(file, e);
    } catch (RuntimeException e) {
      // At damaged or booby-trapped files the library throws anything, null pointers among it.
      throw damaged(file, e);
    }
    List<FileRead> files = List.of(FileRead.of(file.getFileName().toString(), bytes));
    return new Source(gathering.grids, gathering.broken, files, leftAlone, true);
  }

  private static void parse(InputStream part, DefaultHandler events)
      throws IOException, SAXException, ParserConfigurationException {
    // No document types, so no entities: neither those that swell nor those that fetch.
    XMLReader reader = XMLHelper.newXMLReader();
    reader.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    reader.setContentHandler(events);
    try {
      reader.parse(new InputSource(part));
    } catch (SAXException stop) {
      if (!SheetTable.isEnough(stop)) {
        throw stop;
      }
    }
  }

  /** Whether the workbook counts its days from 1904. */
  private static boolean from1904(XSSFReader workbook)
      throws IOException, OpenXML4JException, SAXException, ParserConfigurationException {
    boolean[] found = new boolean[1];
    try (InputStream book = workbook.getWorkbookData()) {
      parse(
          book,
          new DefaultHandler() {
            @Override
            public void startElement(
                String uri, String name, String qualified, Attributes attributes) {
              String told = attributes.getValue("date1904");
              if (name.equals("workbookPr") && told != null) {
                found[0] = told.equals("1") || told.equals("true");
              }
            }
          });
    }
    return found[0];
  }

  private static UnreadableInput damaged(Path file, Exception e) {
    return new UnreadableInput(file + " could not be read: it is damaged, or no XLSX workbook", e);
  }

  private static void refuseOtherFormats(Path file, byte[] bytes) throws UnreadableInput {
    FileMagic magic = FileMagic.valueOf(bytes);
    if (magic == FileMagic.OLE2) {
      throw new UnreadableInput(
          file
              + (isEncrypted(bytes)
                  ? " could not be read: it is protected by a password; save it without one"
                  : " could not be read: it is a workbook of the old binary kind; save it as .xlsx"));
    }
    if (magic != FileMagic.OOXML) {
      boolean csv = file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".csv");
      throw new UnreadableInput(
          file
              + (csv
                  ? " is a single CSV file; name the folder that holds the tables"
                  : " could not be read: it is no XLSX workbook"));
    }
  }

  private static boolean isEncrypted(byte[] bytes) {
    try (POIFSFileSystem files = new POIFSFileSystem(new ByteArrayInputStream(bytes))) {
      return files.getRoot().hasEntryCaseInsensitive("EncryptedPackage");
    } catch (IOException | RuntimeException e) {
      return false; // Too damaged to tell: then the other line is said.
    }
  }
}
