package org.jawroom.tables.row;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.schema.TableSpec;

/** The row from which each object of a shop was read, so that a later warning can name it. */
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

  /** Records the row of a name; the first one wins: for a mount, the row of its first bolt. */
  public void put(TableSpec table, Origin origin, String... names) {
    origins.computeIfAbsent(table, none -> new HashMap<>()).putIfAbsent(key(names), origin);
  }

  /**
   * Finds the row of an object.
   *
   * @param names its name; for guards, parts and mounts preceded by that of the machine or vise
   */
  public Optional<Origin> find(TableSpec table, String... names) {
    return Optional.ofNullable(origins.getOrDefault(table, Map.of()).get(key(names)));
  }

  private static List<String> key(String... names) {
    return Stream.of(names).map(Names::key).toList();
  }
}
