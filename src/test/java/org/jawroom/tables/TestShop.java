package org.jawroom.tables;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;

/** A shop in rows of column and text, written as CSV; each test changes what it is about. */
public final class TestShop {
  private final Path folder;
  private final Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();
  private final Map<String, String> options = new LinkedHashMap<>();

  private TestShop(Path folder) {
    this.folder = folder;
  }

  public static TestShop in(Path folder) {
    return new TestShop(folder);
  }

  /** One sound mill and one sound vise. */
  public static TestShop sound(Path folder) {
    return in(folder).machine("mill").vise("vise");
  }

  public TestShop machine(String name, String... cells) {
    return row(
        "machines",
        with(
            cells,
            "machine",
            name,
            "table_moves",
            "xy",
            "table_length",
            "600",
            "table_width",
            "300",
            "travel_x",
            "400",
            "travel_y",
            "300",
            "slot_count",
            "3",
            "slot_width",
            "14 mm",
            "slot_pitch",
            "100",
            "front_gap",
            "80",
            "rear_gap",
            "50",
            "left_gap",
            "none",
            "right_gap",
            "none"));
  }

  public TestShop vise(String name, String... cells) {
    return row(
        "vises",
        with(
            cells,
            "vise",
            name,
            "jaw_width",
            "150 mm",
            "jaw_height",
            "40",
            "bed_height",
            "60 mm",
            "opening_max",
            "150 mm"));
  }

  public TestShop guard(String machine, String name, String... cells) {
    return row("guards", with(cells, "machine", machine, "guard", name));
  }

  public TestShop part(String vise, String name, String... cells) {
    return row(
        "vise_parts",
        with(
            cells,
            "vise",
            vise,
            "part",
            name,
            "u_min_closed",
            "0",
            "u_max_closed",
            "10",
            "v_min",
            "-5",
            "v_max",
            "5",
            "w_min",
            "0",
            "w_max",
            "20"));
  }

  TestShop mount(String vise, String name, String... cells) {
    return row("mounts", with(cells, "vise", vise, "mount", name, "u", "0", "v", "0"));
  }

  public TestShop job(String name, String... cells) {
    return row(
        "jobs",
        with(cells, "job", name, "part_length", "80", "part_width", "50", "part_height", "30"));
  }

  /** The vise of {@link #sound} where it stands on its mill. */
  public TestShop standing(String... cells) {
    return row(
        "standing",
        with(
            cells,
            "machine",
            "mill",
            "vise",
            "vise",
            "handle_to",
            "front",
            "from_left",
            "300",
            "from_front",
            "150"));
  }

  /** A set of the vise of {@link #sound}. */
  public TestShop set(String... cells) {
    return row("sets", with(cells, "set", "pair", "vise", "vise"));
  }

  /** A check of the mill and the vise of {@link #sound}. */
  public TestShop check(String... cells) {
    return row(
        "checks",
        with(
            cells,
            "machine",
            "mill",
            "vise",
            "vise",
            "handle_to",
            "front",
            "from_left",
            "200",
            "from_front",
            "150",
            "part",
            "moving jaw",
            "guard",
            "door",
            "found",
            "40"));
  }

  public TestShop setting(String name, String value) {
    return row("settings", with(new String[0], "setting", name, "value", value));
  }

  public TestShop option(String name, String value) {
    options.put(name, value);
    return this;
  }

  public Reading read() throws UnreadableInput {
    tables.forEach((table, rows) -> write(folder.resolve(table + ".csv"), csv(rows)));
    return ShopReader.read(folder, options);
  }

  public List<String> faults() throws UnreadableInput {
    return read().faults().stream().map(Fault::toString).toList();
  }

  List<String> notes(Note.Kind kind) throws UnreadableInput {
    return read().notes(kind).stream().map(Note::toString).toList();
  }

  static void write(Path file, String text) {
    try {
      Files.writeString(file, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private TestShop row(String table, Map<String, String> cells) {
    tables.computeIfAbsent(table, none -> new ArrayList<>()).add(cells);
    return this;
  }

  private static Map<String, String> with(String[] changes, String... cells) {
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i += 2) {
      row.put(cells[i], cells[i + 1]);
    }
    for (int i = 0; i < changes.length; i += 2) {
      row.put(changes[i], changes[i + 1]);
    }
    return row;
  }

  private static String csv(List<Map<String, String>> rows) {
    Set<String> columns = new LinkedHashSet<>();
    rows.forEach(row -> columns.addAll(row.keySet()));
    StringBuilder text = new StringBuilder(String.join(",", columns)).append("\n");
    for (Map<String, String> row : rows) {
      text.append(
          columns.stream()
              .map(column -> '"' + row.getOrDefault(column, "").replace("\"", "\"\"") + '"')
              .collect(Collectors.joining(",", "", "\n")));
    }
    return text.toString();
  }
}
