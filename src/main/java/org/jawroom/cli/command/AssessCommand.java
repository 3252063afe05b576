package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jawroom.advice.Advice;
import org.jawroom.advice.assess.Assessment;
import org.jawroom.advice.assess.Assessor;
import org.jawroom.app.choice.Pairs;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PrintedNames;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Facts;
import org.jawroom.app.run.Solving;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Threads;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Output;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.report.assess.AssessReports;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.tables.Reading;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.row.Notation;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom assess}: compares machines that might be bought with what the shop owns. */
@Command(
    name = "assess",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Compares machines that might be bought with those that the shop owns.",
      "For each machine: which vises fit, which jobs it holds that no owned machine"
          + " holds, which T-nuts fit its slots, how large a vise there is room for, what to"
          + " look for in such a vise, and what to ask the seller; then which machine is the"
          + " better buy. Writes assess.csv (for programs), assess.xlsx, and assess.pdf to"
          + " print."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom assess shop.xlsx                       every candidate",
      "  jawroom assess shop.xlsx \"offered mill\" -o out --tool 150mm",
      "  jawroom assess tables \"knee mill\"              an owned one, beside the others",
      "",
      "Exit status: 0 done; 1 the tables were refused; 2 wrong use, no such machine, or"
          + " no candidate; 3 a"
          + " file could not be read or written.",
    })
public final class AssessCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "INPUT",
      description = "a folder of CSV files or an XLSX workbook")
  private Path input;

  @Parameters(
      index = "1..*",
      arity = "0..*",
      paramLabel = "MACHINE",
      description = "names in the tables (default: every machine of status candidate)")
  private List<String> names = new ArrayList<>();

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "the folder for the reports (default: ${DEFAULT-VALUE})")
  private Path output;

  @Option(
      names = "--tool",
      order = 2,
      paramLabel = "LENGTH",
      description =
          "the longest tool, nose to tip, for the height left under it (default: the"
              + " longest of the jobs)")
  private String tool;

  @Mixin private Threads threads;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    int workers = threads.count();
    Output.isFolder(spec, output);
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Output.check(spec, AssessReports.destination(output), Input.files(input, reading));
    Shop shop = reading.shop().get();
    OptionalLong longest = tool(reading.notation());
    Optional<List<Machine>> candidates = candidates(shop, err);
    if (candidates.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    candidates.get().forEach(new PrintedNames(reading.origins(), err)::of);
    List<Advice> advice = Solving.all(shop, workers, Progress.on(err));
    List<JobOutcome> jobs = Solving.jobs(shop, workers, Progress.on(err));
    RunFacts facts = Facts.of(reading, shop, advice.stream().map(Advice::outcome).toList());
    Assessment assessment = Assessor.assess(shop, advice, jobs, candidates.get(), longest);
    List<Path> written = AssessReports.write(output, assessment, facts);
    AssessReports.summary(assessment, facts.unit(), written).forEach(out::println);
    return ExitStatus.DONE;
  }

  /**
   * The candidates without duplicates; empty, with one line on {@code err}, if one is unknown or
   * there is none.
   */
  private Optional<List<Machine>> candidates(Shop shop, PrintWriter err) {
    Set<Machine> found = new LinkedHashSet<>();
    Pairs pairs = new Pairs(shop, err);
    for (String name : names) {
      Optional<Machine> machine = pairs.machine(name);
      if (machine.isEmpty()) {
        return Optional.empty();
      }
      found.add(machine.get());
    }
    if (names.isEmpty()) {
      shop.machines().stream().filter(Machine::candidate).forEach(found::add);
    }
    if (found.isEmpty()) {
      err.println("No machine has the status candidate: name the machines to assess.");
      return Optional.empty();
    }
    return Optional.of(List.copyOf(found));
  }

  private OptionalLong tool(Notation notation) {
    if (tool == null) {
      return OptionalLong.empty();
    }
    try {
      long length = Lengths.parse(tool, notation.bare(), notation.decimalComma()).value();
      if (length < 0) {
        throw new BadCell("is below 0");
      }
      return OptionalLong.of(length);
    } catch (BadCell bad) {
      throw new ParameterException(
          spec.commandLine(), "--tool \"" + tool + "\" " + bad.getMessage());
    }
  }
}
