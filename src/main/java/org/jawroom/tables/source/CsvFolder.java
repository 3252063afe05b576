package org.jawroom.tables.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.csv.CsvTable;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.FileRead;
import org.jawroom.tables.source.grid.FileTrouble;
import org.jawroom.tables.source.grid.GatheredTables;
import org.jawroom.tables.source.grid.LeftAlone;
import org.jawroom.tables.source.grid.UnreadableInput;

/** A folder of CSV files, or links to such, one for each table. */
final class CsvFolder {
  private static final String ENDING = ".csv";

  /**
   * A file or folder whose name resembles that of a table.
   *
   * @param right what to do if it is that table
   */
  private record Doubtful(String origin, TableName name, String right) {}

  private final Path folder;
  private final FaultList faults;
  private final GatheredTables gathering;
  private final List<FileRead> files = new ArrayList<>();
  private final List<LeftAlone> leftAlone = new ArrayList<>();
  private final List<Doubtful> doubtful = new ArrayList<>();

  private CsvFolder(Path folder, FaultList faults, CellBudget room) {
    this.folder = folder;
    this.faults = faults;
    this.gathering = new GatheredTables(faults, room);
  }

  static Source read(Path folder, FaultList faults, CellBudget room) throws UnreadableInput {
    return new CsvFolder(folder, faults, room).read();
  }

  private Source read() throws UnreadableInput {
    for (Path entry : entries(folder)) {
      String name = entry.getFileName().toString();
      TableName meant = TableName.ofFile(name);
      if (meant.kind() == TableName.Kind.TABLE) {
        readTable(entry, name, meant.table().orElseThrow());
      } else if (Files.isDirectory(entry)) {
        passFolder(entry, name, meant);
      } else {
        passFile(name, meant);
      }
    }
    // Only now are all existing tables known.
    doubtful.forEach(this::judge);
    return new Source(gathering.grids, gathering.broken, files, leftAlone, false);
  }

  /** A file with the name of a table must be readable: a guard left out would be hit. */
  private void readTable(Path file, String name, TableSpec table) throws UnreadableInput {
    byte[] bytes = FileRead.bytes(file, gathering.room.heap());
    files.add(FileRead.of(name, bytes));
    if (gathering.isFirst(table, name)) {
      new CsvTable(table, name, faults).read(bytes, gathering);
    }
  }

  private void passFile(String name, TableName meant) {
    switch (meant.kind()) {
      case NEARLY, SPARE -> {
        String file = meant.table().orElseThrow().tableName() + ENDING;
        String right = (TableName.isText(name) ? "rename it to " : "save it as ") + file;
        doubtful.add(new Doubtful(name, meant, right));
      }
      default -> {
        if (!name.startsWith(".")) {
          leftAlone.add(LeftAlone.noTable(name));
        }
      }
    }
  }

  /** Folders are not tables, but one with a table's name may contain that table. */
  private void passFolder(Path entry, String name, TableName meant) {
    if (meant.table().isPresent() && holdsCsv(entry)) {
      TableName spare = new TableName(TableName.Kind.SPARE, meant.table());
      doubtful.add(new Doubtful("folder " + name, spare, "move the table out of it"));
    }
  }

  private static boolean holdsCsv(Path folder) {
    try {
      return entries(folder).stream()
          .anyMatch(file -> file.toString().toLowerCase(Locale.ROOT).endsWith(ENDING));
    } catch (UnreadableInput e) {
      return true; // Unreadable, so it may contain one.
    }
  }

  private void judge(Doubtful one) {
    TableSpec table = one.name.table().orElseThrow();
    boolean isSpare = one.name.kind() == TableName.Kind.SPARE;
    if (isSpare && gathering.has(table)) {
      if (!one.origin.startsWith(".")) {
        leftAlone.add(LeftAlone.noTable(one.origin));
      }
      return;
    }
    gathering.refuseNearly(table, one.origin, one.right);
  }

  private static List<Path> entries(Path folder) throws UnreadableInput {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.sorted().toList();
    } catch (IOException e) {
      throw new UnreadableInput(folder + " could not be read: " + FileTrouble.reason(e), e);
    }
  }
}
