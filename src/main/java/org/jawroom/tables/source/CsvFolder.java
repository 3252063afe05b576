package org.jawroom.tables.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.tables.schema.TableSpec;

/** A folder of CSV files, or links to such, one a table. */
final class CsvFolder {
  private CsvFolder() {}

  private static final String ENDING = ".csv";

  static Source read(Path folder, FaultList faults) throws UnreadableInput {
    Source.Gathering gathering = new Source.Gathering(faults);
    List<FileRead> files = new ArrayList<>();
    List<String> leftAlone = new ArrayList<>();
    for (Path file : csvFiles(folder)) {
      String name = file.getFileName().toString();
      Optional<TableSpec> table =
          TableSpec.named(name.substring(0, name.length() - ENDING.length()));
      if (table.isEmpty()) {
        leftAlone.add(name);
        continue;
      }
      // Whatever bears the name of a table must be one: a guard left out would be hit.
      byte[] bytes = FileRead.bytes(file);
      files.add(FileRead.of(name, bytes));
      if (gathering.isFirst(table.get(), name)) {
        new CsvTable(table.get(), name, faults).read(bytes, gathering);
      }
    }
    return new Source(gathering.grids, gathering.broken, files, leftAlone, false);
  }

  private static List<Path> csvFiles(Path folder) throws UnreadableInput {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries
          .filter(path -> path.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(ENDING))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UnreadableInput(folder + " could not be read: " + FileTrouble.reason(e), e);
    }
  }
}
