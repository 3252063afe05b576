package org.jawroom.report.xlsx;

import java.util.List;
import org.jawroom.report.format.PeopleUnit;

/**
 * The inputs of a run, for the reports to list.
 *
 * @param files the files read
 * @param settings all settings in force, including defaults, in words
 * @param defaults one line for each default used
 * @param warnings one line for each warning
 * @param blanks one line for each blank
 * @param unit the unit for people
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

  /** A file and a checksum that reveals any later change. */
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

  /** A copy with another unit. */
  public RunFacts in(PeopleUnit unit) {
    return new RunFacts(files, settings, defaults, warnings, blanks, unit, toolVersion);
  }
}
