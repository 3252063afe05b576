package org.jawroom.tables.row;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.schema.TableSpec;

/** The rows of a table by their unique names, to which other tables refer. */
public final class Owners {

  /** A row and its name; the name is empty if missing or refused. */
  public record Owner(String name, Row row) {}

  private final List<Owner> all = new ArrayList<>();
  private final Map<String, Owner> owners = new LinkedHashMap<>();
  private final Map<String, Owner> further = new LinkedHashMap<>();
  private final boolean complete;
  private final String thing;
  private final Ledger ledger;

  /**
   * The owners in a table.
   *
   * @param column the name column, whose header is also the word for such an object
   */
  public Owners(TableSpec table, List<Row> rows, String column, Ledger ledger) {
    this.thing = column;
    this.ledger = ledger;
    this.complete =
        ledger.source.grid(table).isPresent() && !ledger.source.broken().contains(table);
    Uniques uniques = new Uniques();
    for (Row row : rows) {
      Optional<String> name = row.name(column);
      Owner owner = new Owner(name.orElse(""), row);
      all.add(owner);
      if (name.isPresent() && uniques.add(row, column, name.get())) {
        owners.put(Names.key(name.get()), owner);
        ledger.origins.put(table, new Origins.Origin(row.origin(), row.number()), name.get());
      }
    }
  }

  /**
   * Every row, including those whose name is missing or refused: their other cells are checked too.
   */
  public List<Owner> all() {
    return all;
  }

  /**
   * The row to which {@code name}, found in {@code column} of {@code row}, refers; a fault if there
   * is none.
   */
  public Optional<Owner> find(Row row, String column, String name) {
    Owner owner = owners.getOrDefault(Names.key(name), further.get(Names.key(name)));
    if (owner == null && complete) {
      String item = name.equals(row.raw(column)) ? "" : WordCells.inside(name);
      row.fault(column, item + "is no " + thing + " of this shop" + advice(name));
    }
    return Optional.ofNullable(owner);
  }

  /** A vise at an angle that its row does not list, or else the nearest name. */
  private String advice(String name) {
    int at = name.lastIndexOf(" @");
    Owner square = at < 0 ? null : owners.get(Names.key(name.substring(0, at)));
    return square == null
        ? ledger.hint(name, this::names)
        : "; write " + square.name() + ", or list that angle in its swivel_angles";
  }

  /** Gives a row a further name, by which rows of other tables may refer to it. */
  public void alsoCalled(Owner owner, String name) {
    further.putIfAbsent(Names.key(name), new Owner(name, owner.row()));
  }

  /** The row whose own name it is; empty if there is none. */
  public Optional<Owner> named(String name) {
    return Optional.ofNullable(owners.get(Names.key(name)));
  }

  /** The names listed in a cell, {@code ;} between; empty if it is blank: all. */
  public List<String> list(Row row, String column) {
    List<String> names = new ArrayList<>();
    for (String name : row.list(column, ";")) {
      find(row, column, name).map(Owner::name).ifPresent(names::add);
    }
    if (names.isEmpty() && !row.isBlank(column) && row.isSound()) {
      row.fault(column, "names no " + thing + "; leave it blank for all");
    }
    return names;
  }

  private List<String> names() {
    return Stream.concat(owners.values().stream(), further.values().stream())
        .map(Owner::name)
        .toList();
  }

  /** The machine or vise that a row belongs to. */
  public Optional<Owner> of(Row row) {
    return row.name(thing).flatMap(name -> find(row, thing, name));
  }

  /** Refuses duplicate names. */
  public static final class Uniques {
    private final Map<List<String>, Integer> rows = new HashMap<>();

    /**
     * Whether no earlier row had these names together; if one had, that is a fault of {@code
     * column}.
     */
    public boolean add(Row row, String column, String... names) {
      List<String> key = Stream.of(names).map(Names::key).toList();
      Integer first = rows.putIfAbsent(key, row.number());
      if (first != null) {
        row.fault(column, "is already the name of row " + first + " (case does not count)");
      }
      return first == null;
    }
  }
}
