package org.jawroom.tables;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jawroom.tables.cell.NearestName;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.source.FaultList;
import org.jawroom.tables.source.Source;

/** What is written down while one input is read, and what holds for all of its cells. */
final class Ledger {
  private static final int MOST_HINTS = 10;

  final Source source;
  final FaultList faults;
  final List<Note> notes = new ArrayList<>();
  final Origins origins = new Origins();

  private int hints;

  /** Of bare numbers in rows that name no unit; millimetres until the settings are read. */
  Unit unit = Unit.MM;

  /** Whether decimals stand behind a comma; not until the settings are read. */
  boolean comma;

  /** The unit in which people asked to read. */
  Optional<Unit> show = Optional.empty();

  /** The unit of each sound machine row, by the machine's name. */
  final Map<String, Unit> machineUnits = new HashMap<>();

  Ledger(Source source, FaultList faults) {
    this.source = source;
    this.faults = faults;
  }

  /** What somebody probably meant, for the first faults: against many names it takes long. */
  String hint(String wanted, Supplier<? extends Collection<String>> known) {
    return hints++ < MOST_HINTS ? NearestName.hint(wanted, known.get()) : "";
  }

  Notation notation() {
    return new Notation(unit, comma, show, machineUnits);
  }

  void note(Note.Kind kind, Row row, String text) {
    notes.add(new Note(kind, row.origin(), OptionalInt.of(row.number()), text));
  }

  /** A default that was taken for want of a cell in {@code row}. */
  void tookDefault(Row row, String text) {
    note(Note.Kind.DEFAULT, row, text);
  }
}
