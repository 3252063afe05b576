package org.jawroom.tables;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.row.Origins;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.Row;
import org.jawroom.tables.row.Rows;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;

/**
 * The rows of guards, vise_parts or mounts: each has a name and belongs to a machine or a vise.
 *
 * @param <T> the object built from a row
 */
final class SideRows<T> {

  /** Builds an object from a row; empty if the row is unsound or left out. */
  interface Maker<T> {
    Optional<T> make(Row row, String name, Owners.Owner owner);
  }

  private final Map<Owners.Owner, List<T>> things = new HashMap<>();
  private final Ledger ledger;

  /**
   * @param owners the rows that these rows belong to
   * @param column the column with the row's own name
   * @param ownNames reserved names of the model, which no row may have
   */
  SideRows(
      TableSpec table,
      Owners owners,
      String column,
      List<String> ownNames,
      Maker<T> maker,
      Ledger ledger) {
    this.ledger = ledger;
    for (Row row : Rows.of(table, ledger)) {
      Optional<Owners.Owner> owner = owners.of(row);
      Optional<String> name = row.name(column);
      name.ifPresent(written -> refuseOwnName(row, column, written, ownNames));
      // The other cells of a row are checked even if its name or owner is invalid.
      Owners.Owner whose = owner.orElse(new Owners.Owner("", row));
      Optional<T> thing = maker.make(row, name.orElse(""), whose);
      if (owner.isPresent() && name.isPresent()) {
        thing.ifPresent(made -> things.computeIfAbsent(whose, none -> new ArrayList<>()).add(made));
        Origins.Origin origin = new Origins.Origin(row.origin(), row.number());
        ledger.origins.put(table, origin, whose.name(), name.get());
        noteBareNumbers(row, whose);
      }
    }
  }

  /** In row order. */
  List<T> of(Owners.Owner owner) {
    return things.getOrDefault(owner, List.of());
  }

  private void refuseOwnName(Row row, String column, String name, List<String> ownNames) {
    String compared = ColumnSpec.normal(Names.key(name));
    if (ownNames.stream().map(ColumnSpec::normal).anyMatch(compared::equals)) {
      row.fault(column, "is a name of the model's own; give it another");
    }
  }

  private void noteBareNumbers(Row row, Owners.Owner owner) {
    Unit theirs = owner.row().unit();
    if (row.isBlank("unit") && theirs != ledger.unit && !row.bareColumns().isEmpty()) {
      ledger.note(
          Note.Kind.BARE_NUMBER,
          row,
          String.format(
              "bare numbers (%s) taken as %s, but %s is in %s",
              String.join(", ", row.bareColumns()),
              ledger.unit.plural(),
              owner.name(),
              theirs.plural()));
    }
  }
}
