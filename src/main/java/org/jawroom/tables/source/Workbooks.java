package org.jawroom.tables.source;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.FileRead;
import org.jawroom.tables.source.grid.GatheredTables;
import org.jawroom.tables.source.grid.LeftAlone;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.jawroom.tables.source.sheet.SharedTexts;
import org.jawroom.tables.source.sheet.SheetList;
import org.jawroom.tables.source.sheet.SheetStyles;
import org.jawroom.tables.source.sheet.SheetTable;
import org.jawroom.tables.source.sheet.WorkbookParts;
import org.xml.sax.helpers.DefaultHandler;

/** Reads an XLSX workbook, one sheet for each table, by SAX events: no sheet is held as objects. */
final class Workbooks {
  private final WorkbookParts parts;
  private final FaultList faults;
  private final GatheredTables gathering;
  private final List<LeftAlone> leftAlone = new ArrayList<>();

  /** Sheets whose names resemble that of a table. */
  private final Map<String, TableName> doubtful = new LinkedHashMap<>();

  private Workbooks(WorkbookParts parts, FaultList faults, CellBudget room) {
    this.parts = parts;
    this.faults = faults;
    this.gathering = new GatheredTables(faults, room);
  }

  static Source read(Path file, FaultList faults, CellBudget room) throws UnreadableInput {
    byte[] bytes = FileRead.bytes(file, room.heap());
    if (!ForeignFormat.isZip(bytes)) {
      boolean csv = file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
      throw new UnreadableInput(
          csv
              ? file + " is a single CSV file; name the folder that holds the tables"
              : file + " could not be read: " + ForeignFormat.what(bytes));
    }
    try (WorkbookParts parts = new WorkbookParts(file, bytes)) {
      FileRead read = FileRead.of(file.getFileName().toString(), bytes);
      return new Workbooks(parts, faults, room).read(read);
    }
  }

  private Source read(FileRead file) throws UnreadableInput {
    String main = parts.workbook();
    SheetList book = new SheetList();
    parts.readList(main, book);
    if (!book.isWorkbook()) {
      throw parts.unreadable(
          "it is no workbook, but something else in the same kind of file", null);
    }
    Map<String, WorkbookParts.Relation> relations = parts.relations(main);
    SharedTexts texts = new SharedTexts();
    readFirst(relations, "sharedStrings", texts);
    SheetStyles styles = new SheetStyles();
    readFirst(relations, "styles", styles);
    SheetTable.Shared shared =
        new SheetTable.Shared(texts, styles, book.countsFrom1904(), gathering.room);
    for (SheetList.Listed sheet : book.sheets()) {
      read(sheet, Optional.ofNullable(relations.get(sheet.relation())), shared);
    }
    // Macros are never run or read.
    if (relations.values().stream().anyMatch(one -> one.type().equals("vbaProject"))) {
      leftAlone.add(LeftAlone.noTable("macros"));
    }
    // Only now are all existing tables known.
    doubtful.forEach(this::judge);
    return new Source(gathering.grids, gathering.broken, List.of(file), leftAlone, true);
  }

  /** Parses the first part of a type, if the workbook has one. */
  private void readFirst(
      Map<String, WorkbookParts.Relation> relations, String type, DefaultHandler events)
      throws UnreadableInput {
    for (WorkbookParts.Relation relation : relations.values()) {
      if (relation.type().equals(type) && parts.has(relation.part())) {
        parts.read(relation.part(), WorkbookParts.LARGEST, events);
        return;
      }
    }
  }

  private void read(
      SheetList.Listed sheet, Optional<WorkbookParts.Relation> part, SheetTable.Shared shared)
      throws UnreadableInput {
    String origin = (sheet.hidden() ? "hidden sheet " : "sheet ") + Fault.shortened(sheet.name());
    boolean cells = part.isEmpty() || part.get().type().equals("worksheet");
    TableName meant = TableName.ofSheet(sheet.name());
    switch (meant.kind()) {
      case TABLE -> readTable(meant.table().orElseThrow(), origin, part, shared);
      default -> {
        if (meant.table().isPresent() && cells) {
          doubtful.put(origin, meant);
        } else {
          leftAlone.add(LeftAlone.noTable(origin));
        }
      }
    }
  }

  private void judge(String origin, TableName meant) {
    TableSpec table = meant.table().orElseThrow();
    if (meant.kind() == TableName.Kind.SPARE && gathering.has(table)) {
      leftAlone.add(LeftAlone.noTable(origin));
    } else {
      gathering.refuseNearly(table, origin, "rename it to " + table.tableName());
    }
  }

  private void readTable(
      TableSpec table,
      String origin,
      Optional<WorkbookParts.Relation> part,
      SheetTable.Shared shared)
      throws UnreadableInput {
    if (!gathering.isFirst(table, origin)) {
      return;
    }
    if (part.isEmpty() || !parts.has(part.get().part())) {
      faults.add(table, origin, "", "is named in the workbook, but not in the file; save it again");
    } else if (!part.get().type().equals("worksheet")) {
      faults.add(table, origin, "", "is a chart or the like, no table; give it another name");
    } else {
      SheetTable rows = new SheetTable(table, origin, shared, faults);
      parts.read(part.get().part(), WorkbookParts.LARGEST, rows);
      gathering.add(table, rows.grid(), rows.isWhole());
      return;
    }
    gathering.add(table, Optional.empty(), false);
  }
}
