package org.jawroom.app;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jawroom.tables.Note;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.Fault;
import org.jawroom.tables.source.UnreadableInput;

/** Reads the inputs for a command and lists what is wrong with them. */
public final class Input {
  private static final String OPTION = "option ";

  /** What is left alone, beyond which only the number is printed. */
  private static final int MOST_NAMED = 50;

  private Input() {}

  public static Reading read(Path input, Map<String, String> settings) throws UnreadableInput {
    UnreadableNames.refuseIn(input);
    return ShopReader.read(input, settings);
  }

  /** The same, and names what was left alone; where faults are found, {@link #refuse} does so. */
  public static Reading read(Path input, Map<String, String> settings, PrintWriter err)
      throws UnreadableInput {
    Reading reading = read(input, settings);
    if (reading.shop().isPresent()) {
      nameLeftAlone(reading, err);
    }
    return reading;
  }

  private static void nameLeftAlone(Reading reading, PrintWriter err) {
    List<Note> notes = reading.notes(Note.Kind.LEFT_ALONE);
    notes.stream().limit(MOST_NAMED).forEach(err::println);
    if (notes.size() > MOST_NAMED) {
      err.println(notes.size() - MOST_NAMED + " more files or sheets: left alone.");
    }
  }

  /** The files that were read. */
  public static List<Path> files(Path input, Reading reading) {
    return Files.isDirectory(input)
        ? reading.files().stream().map(read -> input.resolve(read.name())).toList()
        : List.of(input);
  }

  /** Lists every fault, one a line, and returns the exit status that goes with them. */
  public static int refuse(Reading reading, PrintWriter err) {
    List<Fault> faults = reading.faults();
    faults.forEach(err::println);
    nameLeftAlone(reading, err);
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
  public static boolean optionsOnly(Reading reading) {
    return reading.faults().stream().allMatch(fault -> fault.origin().startsWith(OPTION));
  }
}
