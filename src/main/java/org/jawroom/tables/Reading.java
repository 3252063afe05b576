package org.jawroom.tables;

import java.util.List;
import java.util.Optional;
import org.jawroom.shop.Shop;
import org.jawroom.tables.source.Fault;
import org.jawroom.tables.source.FileRead;

/**
 * What came of reading the inputs.
 *
 * @param shop there exactly if there are no faults
 * @param faults in the order of tables, rows and columns
 * @param notes in the order in which they came up
 * @param files every file read, with its fingerprint
 * @param settings those in force, in the order of the page
 * @param notation how the tables write numbers, as far as they could be read
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
      throw new IllegalArgumentException("either a shop or faults");
    }
  }

  /** The notes of one kind. */
  public List<Note> notes(Note.Kind kind) {
    return notes.stream().filter(note -> note.kind() == kind).toList();
  }
}
