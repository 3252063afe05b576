package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jawroom.app.input.Input;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.CompareSide;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.ShownUnit;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.report.compare.Comparison;
import org.jawroom.report.compare.ComparisonCsv;
import org.jawroom.report.compare.ComparisonText;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.tables.Reading;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom compare}: prints the changed pairings to standard output; writes no file. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Lists the pairings that changed from OLD to NEW, what got worse first.",
      "A pairing has changed if its verdict, margin or usable opening has. OLD and NEW"
          + " are each a report (a folder that holds pairings.csv), taken as it stands, or"
          + " tables (a folder of CSV files or an XLSX workbook), solved now. Settings given"
          + " as options, other than show, apply to tables only. Margins are those over the"
          + " full opening. Writes no file."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom compare reports shop.xlsx                    the tables changed since",
      "  jawroom compare reports shop.xlsx --clearance 8mm    what more clearance costs",
      "  jawroom compare before.xlsx after.xlsx --csv",
      "",
      "Exit status: 0 done, whatever changed; 1 tables were refused; 2 wrong use; 3 a"
          + " file could not be"
          + " read, or is no report.",
    })
public final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "OLD", description = "a report or tables, as it was")
  private Path oldPath;

  @Parameters(
      index = "1",
      paramLabel = "NEW",
      description = "a report or tables, as it is or might be")
  private Path newPath;

  @Option(names = "--csv", order = 1, description = "print the changes as CSV, lengths in mm")
  private boolean csv;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    CompareSide before = CompareSide.read(oldPath, SettingOptions.given(spec), err);
    CompareSide after = CompareSide.read(newPath, SettingOptions.given(spec), err);
    PeopleUnit unit = unit(before, after);
    Optional<Integer> refusal = refusal(List.of(before, after), err);
    if (refusal.isPresent()) {
      return refusal.get();
    }
    note(before, after, err);
    int workers = Runtime.getRuntime().availableProcessors();
    Comparison comparison =
        Comparison.of(
            before.pairings(workers, Progress.on(err)), after.pairings(workers, Progress.on(err)));
    before.refuseTwins();
    after.refuseTwins();
    if (csv) {
      ComparisonCsv.write(comparison, out);
    } else {
      ComparisonText.write(before.heading(), after.heading(), comparison, unit, out::println);
    }
    out.flush();
    return ExitStatus.DONE;
  }

  /** The new side's unit, else the old side's; for two reports, which have none, the option's. */
  private PeopleUnit unit(CompareSide before, CompareSide after) {
    if (before.reading().isPresent() || after.reading().isPresent()) {
      return after.unit().or(before::unit).orElse(PeopleUnit.MM);
    }
    return ShownUnit.of(spec, SettingOptions.given(spec).getOrDefault("show", Unit.MM.sign()));
  }

  /**
   * Lists the faults of both sides; faults in options only once, since they are the same for both.
   */
  private static Optional<Integer> refusal(List<CompareSide> sides, PrintWriter err) {
    List<CompareSide> refused = sides.stream().filter(CompareSide::isRefused).toList();
    Optional<Integer> status = Optional.empty();
    for (CompareSide side : refused) {
      Reading reading = side.reading().orElseThrow();
      if (Input.optionsOnly(reading)) {
        return Optional.of(status.orElseGet(() -> Input.refuse(reading, err)));
      }
      err.println("In " + side.path() + ":");
      status = Optional.of(Input.refuse(reading, err));
    }
    return status;
  }

  private void note(CompareSide before, CompareSide after, PrintWriter err) {
    for (CompareSide side : List.of(before, after)) {
      if (side.liesAmongTables()) {
        err.println(
            "Note: "
                + side.path()
                + " holds tables too; its "
                + PairingsCsv.FILE
                + " was taken as it stands, the tables were not solved.");
      }
    }
    boolean settingsOfTables =
        SettingOptions.given(spec).keySet().stream().anyMatch(name -> !name.equals("show"));
    if (settingsOfTables && before.reading().isEmpty() && after.reading().isEmpty()) {
      err.println(
          "Note: both are reports, taken as they stand; the settings given change nothing.");
    }
  }
}
