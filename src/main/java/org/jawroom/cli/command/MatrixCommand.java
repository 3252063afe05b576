package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jawroom.app.choice.MachineRange;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PrintedNames;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.run.MatrixRun;
import org.jawroom.cli.option.MatrixOptions;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Threads;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Foreseen;
import org.jawroom.cli.refusal.Output;
import org.jawroom.report.Reports;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.row.Origins;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom matrix}: every pairing, into CSV files and {@code matrix.xlsx}. */
@Command(
    name = "matrix",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Solves every pairing of a machine and a vise, and writes the matrix.",
      "Finds the best place of each pairing on the T-slots, and what would make the"
          + " vise fit where it does not. Writes pairings.csv, remedies.csv and unknowns.csv"
          + " (for programs) and matrix.xlsx (for people); where the tables have jobs,"
          + " jobs.csv too: which vise holds each job on which machine, and where.",
      "Above 20000 pairings the workbook is an overview, and remedies are computed only"
          + " with --remedies."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom matrix shop.xlsx",
      "  jawroom matrix tables -o out --clearance 1/4in --show in",
      "  jawroom matrix shop.xlsx --drawings",
      "  jawroom matrix tables --shortest-tool 60mm --max-overhang 40mm",
      "  jawroom matrix large --machines \"mill 1…mill 9\" -o part1 --no-workbook",
      "  jawroom matrix large -o - | gzip > pairings.csv.gz",
      "",
      "Exit status: 0 done, whatever the verdicts; 1 the tables were refused; 2 wrong"
          + " use; 3 a file could"
          + " not be read or written.",
    })
public final class MatrixCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "INPUT",
      description = "a folder of CSV files (machines.csv, vises.csv, ...) or an XLSX workbook")
  private Path input;

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "DIR",
      defaultValue = "reports",
      description =
          "the folder for the reports (default: ${DEFAULT-VALUE}); with - pairings.csv is"
              + " printed, and nothing is written")
  private Path output;

  @Mixin private Threads threads;

  @Option(
      names = "--drawings",
      order = 3,
      arity = "0..1",
      fallbackValue = "60",
      defaultValue = "0",
      paramLabel = "N",
      description = "add a sheet Drawings to the workbook, with at most N pairings (default: 60)")
  private int drawings;

  @Mixin private MatrixOptions options;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    int workers = threads.count();
    if (drawings < 0) {
      throw new ParameterException(
          spec.commandLine(), "--drawings takes a whole number from 1 up.");
    }
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Shop shop = reading.shop().get();
    Optional<MachineRange> part = options.part(shop, err);
    if (part.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    Shop solved = part.get().shop();
    ReportOptions wanted = options.wanted(part.get(), shop, drawings);
    if (drawings > 0) {
      foresee(solved, wanted, reading.origins());
    }
    MatrixRun run =
        new MatrixRun(reading, solved, wanted, workers, spec.commandLine().getOut(), err);
    if (output.equals(Output.STANDARD)) {
      run.print();
    } else {
      Output.check(spec, Reports.destination(output, solved, wanted), Input.files(input, reading));
      run.write(output);
    }
    return ExitStatus.DONE;
  }

  /** Prints the expected size of the drawings if any are wanted, or why there are none. */
  private void foresee(Shop shop, ReportOptions wanted, Origins origins) {
    if (output.equals(Output.STANDARD) || !wanted.workbook()) {
      throw new ParameterException(
          spec.commandLine(),
          "--drawings are in the workbook, which this run does not write; leave out "
              + (output.equals(Output.STANDARD) ? "-o -." : "--no-workbook."));
    }
    if (Foreseen.pairings(shop) > ReportOptions.DETAILED) {
      spec.commandLine()
          .getErr()
          .println(
              "No drawings: of more than "
                  + ReportOptions.DETAILED
                  + " pairings the workbook gives an overview. Take fewer machines with --machines,"
                  + " or draw single pairings with jawroom draw.");
    } else {
      Foreseen.drawings(shop, drawings).check(spec, "ask for fewer drawings with --drawings");
      new PrintedNames(origins, spec.commandLine().getErr()).announce(shop);
    }
  }
}
