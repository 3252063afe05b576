package org.jawroom.tables;

import java.util.List;
import java.util.Optional;
import org.jawroom.shop.Shop;
import org.jawroom.tables.row.Notation;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.row.Origins;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.FileRead;

/**
 * The result of reading the inputs.
 *
 * @param shop present if and only if there are no faults
 * @param faults in the order of tables, rows and columns
 * @param notes in the order of occurrence
 * @param files every file read, with its checksum
 * @param settings those in force, in the order of the specification
 * @param notation how the tables write numbers, as far as that could be read
 */
public record Reading(
    Optional<Shop> shop,
    List<Fault> faults,
    List<Note> notes,
    List<FileRead> files,
    List<SettingUsed> settings,
    Notation notation,
    Origins origins) {

  public Reading {
    faults = List.copyOf(faults);
    notes = List.copyOf(notes);
    files = List.copyOf(files);
    settings = List.copyOf(settings);
    if (shop.isPresent() != faults.isEmpty()) {
      throw new IllegalArgumentException("needs either a shop or faults");
    }
  }

  /** The same with another shop instead of the one that was read. */
  public Reading with(Shop other) {
    return new Reading(Optional.of(other), faults, notes, files, settings, notation, origins);
  }

  /** The notes of one kind. */
  public List<Note> notes(Note.Kind kind) {
    return notes.stream().filter(note -> note.kind() == kind).toList();
  }
}
