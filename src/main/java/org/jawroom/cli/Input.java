package org.jawroom.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.Fault;
import org.jawroom.tables.source.UnreadableInput;

/** Reads the inputs for a command and lists what is wrong with them. */
final class Input {
  private static final String OPTION = "option ";

  private Input() {}

  static Reading read(Path input, Map<String, String> settings) throws UnreadableInput {
    UnreadableNames.refuseIn(input);
    return ShopReader.read(input, settings);
  }

  /** The files that were read. */
  static List<Path> files(Path input, Reading reading) {
    return Files.isDirectory(input)
        ? reading.files().stream().map(read -> input.resolve(read.name())).toList()
        : List.of(input);
  }

  /** Lists every fault, one a line, and returns the exit status that goes with them. */
  static int refuse(Reading reading, PrintWriter err) {
    List<Fault> faults = reading.faults();
    faults.forEach(err::println);
    if (optionsOnly(reading)) {
      return ExitStatus.WRONG_USE;
    }
    err.println(
        faults.size() == 1
            ? "1 fault. Nothing was written; put it right and run again."
            : faults.size() + " faults. Nothing was written; put them right and run again.");
    return ExitStatus.REFUSED;
  }

  /** Whether the tables themselves are sound. */
  static boolean optionsOnly(Reading reading) {
    return reading.faults().stream().allMatch(fault -> fault.origin().startsWith(OPTION));
  }
}
