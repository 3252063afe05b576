package org.jawroom.tables.row;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.cell.name.NearestName;
import org.jawroom.tables.source.Source;
import org.jawroom.tables.source.grid.FaultList;

/** The state of reading one input: collected faults and notes, and what applies to all cells. */
public final class Ledger {
  private static final int MOST_HINTS = 10;

  public final Source source;
  public final FaultList faults;
  public final List<Note> notes = new ArrayList<>();
  public final Origins origins = new Origins();

  private int hints;

  /** The unit of bare numbers in rows that name none; millimetres until the settings are read. */
  public Unit unit = Unit.MM;

  /** Whether the decimal sign is a comma; false until the settings are read. */
  public boolean comma;

  /** The unit chosen for people. */
  public Optional<Unit> show = Optional.empty();

  /** The unit of each sound machine row, by the machine's name. */
  public final Map<String, Unit> machineUnits = new HashMap<>();

  public Ledger(Source source, FaultList faults) {
    this.source = source;
    this.faults = faults;
  }

  /** Suggests the nearest name, for the first faults only: comparing with many names is slow. */
  public String hint(String wanted, Supplier<? extends Collection<String>> known) {
    return hints++ < MOST_HINTS ? NearestName.hint(wanted, known.get()) : "";
  }

  /** The decimal sign of text, as far as the settings are read. */
  DecimalSign sign() {
    return new DecimalSign(comma);
  }

  public Notation notation() {
    return new Notation(unit, comma, show, machineUnits);
  }

  public void note(Note.Kind kind, Row row, String text) {
    notes.add(new Note(kind, row.origin(), OptionalInt.of(row.number()), text));
  }

  /** Notes that the default was used for a blank cell of {@code row}. */
  public void tookDefault(Row row, String text) {
    note(Note.Kind.DEFAULT, row, text);
  }
}
