package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.run.CorrectedVerdicts;
import org.jawroom.checks.Reconciliation;
import org.jawroom.checks.Suspect;
import org.jawroom.checks.Suspicion;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Terminal;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Output;
import org.jawroom.report.checks.ReconcileReports;
import org.jawroom.report.checks.ReconcileText;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom reconcile}: gaps found on the machine against the tables. */
@Command(
    name = "reconcile",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Compares gaps found on the machine, the table checks, with what the other tables say.",
      "Lists what is closer than it should be, which readings may be wrong and what each must then"
          + " be, which one to measure next, and what checks leave of readings within bounds."
          + " Writes checks.csv, suspects.csv, narrowed.csv and reconciliation.txt."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom card shop.xlsx \"knee mill\" \"plain 125\" --checks checks.csv",
      "  jawroom reconcile shop.xlsx -o checked",
      "",
      "Exit status: 0 done, whatever the checks say; 1 the tables were refused; 2 wrong use, or no"
          + " checks in the tables; 3 a file could not be read or written.",
    })
public final class ReconcileCommand implements Callable<Integer> {
  /** The width of the page of text in the file. */
  private static final int FILE_COLUMNS = 100;

  /** With more choices a reading has to be measured first; the tables are read again for each. */
  private static final int MOST_CHOICES = 8;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "INPUT",
      description = "a folder of CSV files (machines.csv, checks.csv, ...) or an XLSX workbook")
  private Path input;

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "the folder for the files (default: ${DEFAULT-VALUE})")
  private Path output;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    Output.isFolder(spec, output);
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Output.check(spec, ReconcileReports.destination(output), Input.files(input, reading));
    Shop shop = reading.shop().get();
    if (shop.checks().isEmpty()) {
      err.println(
          "There are no checks in "
              + input
              + ": fill in the table checks; card --checks FILE.csv writes its rows.");
      return ExitStatus.WRONG_USE;
    }
    Reconciliation reconciliation = Reconciliation.of(shop);
    PeopleUnit unit = PeopleUnits.ofShop(reading);
    PrintWriter out = spec.commandLine().getOut();
    Map<List<Suspect>, List<String>> changes = changes(shop, reconciliation);
    long clearance = shop.settings().clearance();
    List<Path> written =
        ReconcileReports.write(
            output,
            reconciliation,
            ReconcileText.lines(unit, clearance, reconciliation, changes, FILE_COLUMNS));
    ReconcileText.lines(unit, clearance, reconciliation, changes, Terminal.columns())
        .forEach(out::println);
    written.forEach(file -> out.println("Written: " + file));
    return ExitStatus.DONE;
  }

  private Map<List<Suspect>, List<String>> changes(Shop shop, Reconciliation reconciliation)
      throws UnreadableInput {
    CorrectedVerdicts verdicts = new CorrectedVerdicts(input, SettingOptions.given(spec), shop);
    Map<List<Suspect>, List<String>> changes = new HashMap<>();
    for (Suspicion suspicion : reconciliation.suspicions()) {
      if (suspicion.choices().size() > MOST_CHOICES) {
        continue;
      }
      for (List<Suspect> choice : suspicion.choices()) {
        changes.put(choice, verdicts.of(choice));
      }
    }
    return changes;
  }
}
