package org.jawroom.report.xlsx;

import java.util.List;
import org.jawroom.report.format.PeopleUnit;

/**
 * What a run was made of, for the reports to tell.
 *
 * @param files the files read
 * @param settings those in force, defaults too, in words
 * @param defaults one line for each default taken, {@code warnings} and {@code blanks} likewise
 * @param unit what people see
 * @param toolVersion as printed; may be empty
 */
public record RunFacts(
    List<FileRead> files,
    List<Setting> settings,
    List<String> defaults,
    List<String> warnings,
    List<String> blanks,
    PeopleUnit unit,
    String toolVersion) {

  /** A file, and a fingerprint that tells whether it has changed since. */
  public record FileRead(String name, String fingerprint) {}

  /** One setting in force. */
  public record Setting(String label, String value) {}

  public RunFacts {
    files = List.copyOf(files);
    settings = List.copyOf(settings);
    defaults = List.copyOf(defaults);
    warnings = List.copyOf(warnings);
    blanks = List.copyOf(blanks);
  }

  /** The same, read in {@code unit}. */
  public RunFacts in(PeopleUnit unit) {
    return new RunFacts(files, settings, defaults, warnings, blanks, unit, toolVersion);
  }
}
