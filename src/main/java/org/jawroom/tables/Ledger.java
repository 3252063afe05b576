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

/** The state of reading one input: collected faults and notes, and what applies to all cells. */
final class Ledger {
  private static final int MOST_HINTS = 10;

  final Source source;
  final FaultList faults;
  final List<Note> notes = new ArrayList<>();
  final Origins origins = new Origins();

  private int hints;

  /** The unit of bare numbers in rows that name none; millimetres until the settings are read. */
  Unit unit = Unit.MM;

  /** Whether the decimal sign is a comma; false until the settings are read. */
  boolean comma;

  /** The unit chosen for people. */
  Optional<Unit> show = Optional.empty();

  /** The unit of each sound machine row, by the machine's name. */
  final Map<String, Unit> machineUnits = new HashMap<>();

  Ledger(Source source, FaultList faults) {
    this.source = source;
    this.faults = faults;
  }

  /** Suggests the nearest name, for the first faults only: comparing with many names is slow. */
  String hint(String wanted, Supplier<? extends Collection<String>> known) {
    return hints++ < MOST_HINTS ? NearestName.hint(wanted, known.get()) : "";
  }

  Notation notation() {
    return new Notation(unit, comma, show, machineUnits);
  }

  void note(Note.Kind kind, Row row, String text) {
    notes.add(new Note(kind, row.origin(), OptionalInt.of(row.number()), text));
  }

  /** Notes that the default was used for a blank cell of {@code row}. */
  void tookDefault(Row row, String text) {
    note(Note.Kind.DEFAULT, row, text);
  }
}
