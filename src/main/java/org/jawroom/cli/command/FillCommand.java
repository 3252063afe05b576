package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.CompareSide;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Output;
import org.jawroom.publish.AtomicFiles;
import org.jawroom.publish.Destination;
import org.jawroom.publish.ReportKind;
import org.jawroom.publish.Scratch;
import org.jawroom.report.compare.ComparedSide;
import org.jawroom.report.compare.Comparison;
import org.jawroom.report.compare.ComparisonText;
import org.jawroom.tables.Reading;
import org.jawroom.tables.fill.Filling;
import org.jawroom.tables.source.csv.FilledRows;
import org.jawroom.tables.source.grid.Fault;
import org.jawroom.tables.source.grid.FileRead;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom fill}: figures into copies of the tables, and what that settles. */
@Command(
    name = "fill",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Fills figures into copies of the tables, and lists what that settled.",
      "FILLED has the columns table, name, reading and value, as jawroom tape writes them."
          + " A bare number is in mm; for a row of the tables in another unit write the unit. Rows"
          + " without a value are skipped. The tables themselves are never changed."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom fill shop.xlsx tape.csv -o filled",
      "",
      "Exit status: 0 done; 1 tables or figures were refused, nothing written; 2 wrong use;"
          + " 3 a file could not be read or written.",
    })
public final class FillCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "INPUT",
      description = "a folder of CSV files (machines.csv, vises.csv, ...) or an XLSX workbook")
  private Path input;

  @Parameters(index = "1", paramLabel = "FILLED", description = "the CSV with the figures")
  private Path filled;

  @Option(
      names = {"-o", "--output"},
      order = 1,
      required = true,
      paramLabel = "DIR",
      description = "the folder for the copies")
  private Path output;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    PrintWriter err = spec.commandLine().getErr();
    Output.isFolder(spec, output);
    refuseOverInput();
    Reading before = Input.read(input, SettingOptions.given(spec), err);
    if (before.shop().isEmpty()) {
      return Input.refuse(before, err);
    }
    String origin = filled.getFileName().toString();
    FilledRows rows = FilledRows.read(FileRead.bytes(filled, Input.heap()), origin);
    Filling filling = Filling.of(input, before.notation(), rows.rows(), origin, Input.heap());
    List<Fault> faults =
        Stream.concat(rows.faults().stream(), filling.faults().stream())
            .sorted(Comparator.comparingInt(fault -> fault.row().orElse(0)))
            .toList();
    if (!faults.isEmpty()) {
      return refuse(faults, err);
    }
    PrintWriter out = spec.commandLine().getOut();
    if (rows.rows().isEmpty()) {
      out.println("Nothing to fill in: no row of " + filled + " has a value.");
      return ExitStatus.DONE;
    }
    Destination destination = destination(filling);
    destination.check();
    Path copy = draft(before, filling);
    Reading after = Input.read(copy, SettingOptions.given(spec));
    if (after.shop().isEmpty()) {
      err.println("With the figures filled in:");
      return Input.refuse(after, err);
    }
    Map<String, AtomicFiles.Content> files = new LinkedHashMap<>();
    filling.files().forEach((name, bytes) -> files.put(name, to -> to.write(bytes)));
    AtomicFiles.publish(destination, files);
    out.println(
        "Filled in: "
            + rows.rows().size()
            + "; without a value: "
            + rows.blank()
            + ". Written: "
            + output);
    compare(before, after, err, out);
    return ExitStatus.DONE;
  }

  /** The tables are never changed, so the copies go neither beside nor above them. */
  private void refuseOverInput() throws IOException {
    Path target = real(output);
    Path tables = real(input);
    if (tables.startsWith(target)) {
      throw new ParameterException(
          spec.commandLine(),
          output + " holds the tables themselves, which are never changed; name another folder.");
    }
  }

  /** With links followed as far as the path exists. */
  private static Path real(Path path) throws IOException {
    Path there = path.toAbsolutePath().normalize();
    Path rest = Path.of("");
    while (!Files.exists(there) && there.getParent() != null) {
      rest = there.getFileName().resolve(rest);
      there = there.getParent();
    }
    return there.toRealPath().resolve(rest).normalize();
  }

  private static int refuse(List<Fault> faults, PrintWriter err) {
    faults.forEach(err::println);
    err.println(
        (faults.size() == 1 ? "1 fault" : faults.size() + " faults")
            + ". Nothing was written; put "
            + (faults.size() == 1 ? "it" : "them")
            + " right and run again.");
    return ExitStatus.REFUSED;
  }

  /** A file that is there already is not replaced: it may be the only copy of somebody's tables. */
  private Destination destination(Filling filling) {
    Map<String, ReportKind> kinds = new LinkedHashMap<>();
    filling.files().keySet().forEach(name -> kinds.put(name, ReportKind.NONE));
    return new Destination(output, kinds);
  }

  /** The copy as the tables are read, before it is published. */
  private Path draft(Reading before, Filling filling) throws IOException {
    Path folder = Scratch.directory("filled");
    for (Map.Entry<String, byte[]> file : filling.files().entrySet()) {
      Files.write(folder.resolve(file.getKey()), file.getValue());
    }
    return Files.isDirectory(input) ? folder : folder.resolve(before.files().get(0).name());
  }

  private void compare(Reading before, Reading after, PrintWriter err, PrintWriter out)
      throws UnreadableInput, IOException {
    int workers = Runtime.getRuntime().availableProcessors();
    CompareSide old = new CompareSide(input, new ComparedSide(), Optional.of(before));
    CompareSide now = new CompareSide(output, new ComparedSide(), Optional.of(after));
    Comparison comparison =
        Comparison.of(
            old.pairings(workers, Progress.on(err)), now.pairings(workers, Progress.on(err)));
    ComparisonText.write(
        old.heading(), now.heading(), comparison, PeopleUnits.ofShop(after), out::println);
    out.flush();
  }
}
