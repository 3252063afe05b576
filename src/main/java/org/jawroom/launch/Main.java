package org.jawroom.launch;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jawroom.app.input.UnreadableNames;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.PlainWriter;
import org.jawroom.app.output.PrintedData;
import org.jawroom.cli.Jawroom;
import org.jawroom.cli.option.PathArgument;
import org.jawroom.report.xlsx.WorkbookAhead;
import org.jawroom.tables.source.grid.FileTrouble;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Runs a command in this JVM and maps its outcome to an exit status. */
public final class Main {
  private Main() {}

  /**
   * For command lines written for versions in which an option changed what bare numbers in tables
   * mean.
   */
  private static final String UNIT_GONE =
      "There is no option --unit: --show mm or --show in says what people read; what bare numbers are"
          + " stands in the tables (column unit, setting unit).";

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] args) {
    int status = run(args);
    // Inside another program (a build) a successful run must not end that program.
    if (status != ExitStatus.DONE) {
      System.exit(status);
    }
  }

  /** Runs a command on the process's own streams. */
  public static int run(String[] args) {
    if (writesWorkbook(args)) {
      WorkbookAhead.load();
    }
    StandardStream out = StandardStream.output();
    StandardStream err = StandardStream.error();
    return run(args, out, err);
  }

  /**
   * Runs a command on the given streams; one line on {@code err} says why standard output could not
   * be written.
   */
  public static int run(String[] args, StandardStream out, StandardStream err) {
    PrintWriter lines = err.writer();
    int status = run(args, out.writer(), lines);
    if (!out.isClosedPipe()) {
      out.failure().ifPresent(why -> lines.println("could not write to standard output: " + why));
    }
    return status;
  }

  /**
   * Whether the run will write a workbook, as far as the arguments show before any class is loaded.
   */
  private static boolean writesWorkbook(String[] args) {
    List<String> given = List.of(args);
    return given.indexOf("matrix") == 0 && !given.contains("--no-workbook") && !given.contains("-");
  }

  /** Runs a command; see {@link org.jawroom.cli} for the exit status. */
  public static int run(String[] args, PrintWriter out, PrintWriter err) {
    CommandLine command = Jawroom.of(args);
    command.setOut(PlainWriter.around(out));
    command.setErr(PlainWriter.around(err));
    command.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    command.registerConverter(Path.class, new PathArgument());
    command.setCaseInsensitiveEnumValuesAllowed(true);
    command.setParameterExceptionHandler(Main::wrongUse);
    command.setExecutionExceptionHandler(Main::failed);
    int status = status(command, args, err);
    // No short-circuit, so that both are flushed.
    boolean lost = out.checkError() | err.checkError();
    return lost && status == ExitStatus.DONE ? ExitStatus.UNREADABLE : status;
  }

  private static int status(CommandLine command, String[] args, PrintWriter err) {
    Optional<String> unreadable = UnreadableNames.line(args);
    if (unreadable.isPresent()) {
      command.getErr().println(unreadable.get());
      return ExitStatus.WRONG_USE;
    }
    try {
      return command.execute(withDashes(args));
    } catch (OutOfMemoryError tooMuch) {
      err.println(
          "These tables need more memory than Java has; give it more, as java -Xmx2g -jar jawroom.jar,"
              + " or split them.");
      return ExitStatus.UNREADABLE;
    } catch (Error broken) {
      // The JVM itself would end with status 1, which means refused inputs.
      return bug(broken, err);
    }
  }

  /**
   * Accepts {@code --least_opening}, as a setting is spelt in its table, for {@code
   * --least-opening}.
   */
  private static String[] withDashes(String[] args) {
    return Arrays.stream(args)
        .map(
            arg -> {
              int end = arg.contains("=") ? arg.indexOf('=') : arg.length();
              return arg.startsWith("--")
                  ? arg.substring(0, end).replace('_', '-') + arg.substring(end)
                  : arg;
            })
        .toArray(String[]::new);
  }

  private static int wrongUse(ParameterException wrong, String[] args) {
    CommandLine command = wrong.getCommandLine();
    PrintWriter err = command.getErr();
    if (wrong instanceof UnmatchedArgumentException unmatched
        && unmatched.getUnmatched().stream().anyMatch(Main::isUnit)) {
      err.println(UNIT_GONE);
      return ExitStatus.WRONG_USE;
    }
    err.println(wrong.getMessage());
    UnmatchedArgumentException.printSuggestions(wrong, err);
    err.println("See '" + command.getCommandSpec().qualifiedName() + " --help'.");
    return ExitStatus.WRONG_USE;
  }

  private static boolean isUnit(String arg) {
    return arg.equals("--unit") || arg.startsWith("--unit=");
  }

  private static int failed(Exception failure, CommandLine command, ParseResult parsed) {
    PrintWriter err = command.getErr();
    if (failure instanceof PrintedData.Stopped) {
      return ExitStatus.UNREADABLE;
    }
    if (failure instanceof UnreadableInput) {
      err.println(failure.getMessage());
      return ExitStatus.UNREADABLE;
    }
    if (failure instanceof FileSystemException file) {
      err.println(file.getFile() + " could not be written: " + FileTrouble.reason(file));
      return ExitStatus.UNREADABLE;
    }
    if (failure instanceof IOException nameless) {
      err.println("A file could not be read or written: " + FileTrouble.reason(nameless));
      return ExitStatus.UNREADABLE;
    }
    return bug(failure, err);
  }

  private static int bug(Throwable failure, PrintWriter err) {
    err.println(
        "This is a bug of jawroom's. Please report it with the lines below and the tables.");
    failure.printStackTrace(err);
    return ExitStatus.BUG;
  }
}
