package org.jawroom.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.tables.cell.Names;
import org.jawroom.tables.schema.TableSpec;

/** Where each thing of a shop was told, so that a later warning can name it. */
public final class Origins {

  /**
   * A row of a file or sheet.
   *
   * @param label the file or sheet
   */
  public record Origin(String label, int row) {
    @Override
    public String toString() {
      return label + " row " + row;
    }
  }

  private final Map<TableSpec, Map<List<String>, Origin>> origins = new HashMap<>();

  Origins() {}

  /** The first row told of a name keeps it: of a mount, the row of its first bolt. */
  void put(TableSpec table, Origin origin, String... names) {
    origins.computeIfAbsent(table, none -> new HashMap<>()).putIfAbsent(key(names), origin);
  }

  /**
   * The row that told of a thing.
   *
   * @param names its name; of guards, parts and mounts first that of the machine or vise
   */
  public Optional<Origin> find(TableSpec table, String... names) {
    return Optional.ofNullable(origins.getOrDefault(table, Map.of()).get(key(names)));
  }

  private static List<String> key(String... names) {
    return Stream.of(names).map(Names::key).toList();
  }
}
