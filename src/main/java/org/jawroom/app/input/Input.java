package org.jawroom.app.input;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.checks.Reconciliation;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.UnreadableInput;

/** Reads the inputs of a command and lists their faults. */
public final class Input {
  private static final String OPTION = "option ";

  /**
   * The largest number of ignored files or sheets listed by name; beyond it only the count is
   * printed.
   */
  private static final int MOST_NAMED = 50;

  private Input() {}

  /** The most memory that this Java has, in bytes. */
  public static long heap() {
    return Runtime.getRuntime().maxMemory();
  }

  public static Reading read(Path input, Map<String, String> settings) throws UnreadableInput {
    UnreadableNames.refuseIn(input);
    return withEvidence(ShopReader.read(input, settings, heap()));
  }

  /** The same with what the checks of the shop say of its tables, so that every report marks it. */
  private static Reading withEvidence(Reading reading) {
    Optional<Shop> shop = reading.shop().filter(read -> !read.checks().isEmpty());
    return shop.isEmpty()
        ? reading
        : reading.with(shop.get().with(Reconciliation.of(shop.get()).evidence()));
  }

  /**
   * Reads the inputs and lists ignored files or sheets; if there are faults, {@link #refuse} lists
   * them.
   */
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

  /** The files read. */
  public static List<Path> files(Path input, Reading reading) {
    return Files.isDirectory(input)
        ? reading.files().stream().map(read -> input.resolve(read.name())).toList()
        : List.of(input);
  }

  /** Lists every fault, one a line, and returns the exit status for refused inputs. */
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

  /** Whether all faults are in options, none in the tables. */
  public static boolean optionsOnly(Reading reading) {
    return reading.faults().stream().allMatch(fault -> fault.origin().startsWith(OPTION));
  }
}
