package org.jawroom.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import org.jawroom.advice.Advisor;
import org.jawroom.advice.Explanation;
import org.jawroom.advice.merit.PairingMerit;
import org.jawroom.app.choice.Pairs;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.run.Facts;
import org.jawroom.cli.option.AtOption;
import org.jawroom.cli.option.SetOption;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Terminal;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.placement.job.JobExplanation;
import org.jawroom.placement.job.JobPairing;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.placement.standing.StandingOutcome;
import org.jawroom.report.explain.ExplainFacts;
import org.jawroom.report.explain.ExplanationBrief;
import org.jawroom.report.explain.ExplanationText;
import org.jawroom.report.explain.JobExplanationText;
import org.jawroom.report.explain.SetExplanationText;
import org.jawroom.report.explain.StandingExplanationText;
import org.jawroom.report.explain.json.ExplanationJson;
import org.jawroom.report.explain.json.JobExplanationJson;
import org.jawroom.report.explain.json.SetExplanationJson;
import org.jawroom.report.explain.json.StandingExplanationJson;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/**
 * {@code jawroom explain}: why one pairing, or a job on it, has its verdict, and what would make it
 * fit.
 */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Explains one pairing, how it holds a job, where it stands, or a set of vises on one table.",
      "Prints where the vise goes, in the measures of a tape; every clearance there,"
          + " and where on the machine it is least; the other turns; and which single change"
          + " would make it fit. With --job: whether the vise holds the part, and where; the"
          + " height above it, the load, and everything that fails. With --set: whether the vises"
          + " of a set stand on the machine together, where, and what limits each. With --at:"
          + " whether the vise is safe where it stands, and which way to move it."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom explain shop.xlsx \"knee mill\" \"plain 125\"",
      "  jawroom explain tables \"knee mill\" \"plain 125\" --json --clearance 8mm",
      "  jawroom explain tables \"knee mill\" \"plain 125\" --job bracket",
      "  jawroom explain tables \"knee mill\" \"plain 125\" --at \"front, left 242.5, front 245\"",
      "  jawroom explain tables \"knee mill\" --set \"two at once\"",
      "",
      "Exit status: 0 done, whatever the verdict; 1 the tables were refused; 2 wrong"
          + " use, or no such"
          + " machine, vise, job or set; 3 a file could not be read.",
    })
public final class ExplainCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "INPUT",
      description = "a folder of CSV files or an XLSX workbook")
  private Path input;

  @Parameters(index = "1", paramLabel = "MACHINE", description = "its name in the tables")
  private String machineName;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "VISE",
      description = "its name in the tables; left out with --set")
  private String viseName;

  @Option(
      names = "--job",
      order = 1,
      paramLabel = "NAME",
      description = "a job of the tables: explain whether and how the vise holds it")
  private String jobName;

  @Option(
      names = "--set",
      order = 2,
      paramLabel = "NAME",
      description = "a set of the tables: explain whether and where its vises stand together")
  private String setName;

  @Mixin private AtOption at;

  @Option(
      names = "--all",
      order = 3,
      description = "every gap, mount and remedy, not what is read in a minute")
  private boolean all;

  @Option(names = "--json", order = 4, description = "print JSON for programs, lengths in mm")
  private boolean json;

  @Override
  public Integer call() throws UnreadableInput {
    SetOption.checkVise(spec, setName, viseName);
    if (setName != null && jobName != null) {
      throw new ParameterException(
          spec.commandLine(), "--job asks about one vise: leave out --set or --job.");
    }
    at.checkAlone(setName != null || jobName != null);
    Reading reading = Input.read(input, SettingOptions.given(spec), spec.commandLine().getErr());
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, spec.commandLine().getErr());
    }
    Shop shop = reading.shop().get();
    Pairs pairs = new Pairs(shop, spec.commandLine().getErr());
    Optional<Machine> machine = pairs.machine(machineName);
    if (machine.isPresent() && setName != null) {
      return explainSet(reading, pairs, machine.get());
    }
    Optional<Vise> vise = machine.isPresent() ? pairs.vise(viseName) : Optional.empty();
    if (vise.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    if (jobName != null) {
      return explainJob(reading, pairs, machine.get(), vise.get());
    }
    if (at.isGiven()) {
      return explainStanding(reading, machine.get(), vise.get());
    }
    explain(reading, machine.get(), vise.get());
    return ExitStatus.DONE;
  }

  private int explainSet(Reading reading, Pairs pairs, Machine machine) {
    Optional<ViseSet> set = pairs.set(setName);
    if (set.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    Settings settings = reading.shop().orElseThrow().settings();
    PeopleUnit unit = PeopleUnits.of(reading, machine);
    SetOutcome outcome = SetPairing.solve(settings, machine, set.get());
    print(
        () -> SetExplanationJson.of(settings, outcome),
        columns -> SetExplanationText.lines(unit, settings, outcome, columns));
    return ExitStatus.DONE;
  }

  private int explainStanding(Reading reading, Machine machine, Vise vise) {
    Settings settings = reading.shop().orElseThrow().settings();
    PeopleUnit unit = PeopleUnits.of(reading, machine);
    Optional<StandingOutcome> found =
        at.outcome(reading, settings, machine, vise, spec.commandLine().getErr());
    if (found.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    StandingOutcome outcome = found.get();
    print(
        () -> StandingExplanationJson.of(outcome),
        columns -> StandingExplanationText.lines(unit, outcome, all, columns));
    return ExitStatus.DONE;
  }

  private int explainJob(Reading reading, Pairs pairs, Machine machine, Vise vise) {
    Optional<Job> job = pairs.job(jobName);
    if (job.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    Settings settings = reading.shop().orElseThrow().settings();
    PeopleUnit unit = PeopleUnits.of(reading, machine);
    JobExplanation explanation = JobPairing.explain(settings, machine, vise, job.get());
    print(
        () -> JobExplanationJson.of(explanation),
        columns -> JobExplanationText.lines(unit, settings, explanation, all, columns));
    return ExitStatus.DONE;
  }

  private void explain(Reading reading, Machine machine, Vise vise) {
    Shop shop = reading.shop().orElseThrow();
    PeopleUnit unit = PeopleUnits.of(reading, machine);
    Settings settings = shop.settings();
    Explanation explanation = Advisor.explain(settings, machine, vise);
    // Alternatives in the house are listed only for a pairing that does not fit.
    boolean fits = explanation.advice().outcome().verdict() == Verdict.FITS;
    List<Outcome> onMachine =
        fits
            ? List.of()
            : PairingMerit.bestFirst(
                settings,
                shop.vises().stream()
                    .map(other -> Pairing.solve(settings, machine, other))
                    .toList(),
                PairingMerit.OF_VISES);
    List<Outcome> ofVise =
        fits
            ? List.of()
            : PairingMerit.bestFirst(
                settings,
                shop.machines().stream()
                    .map(other -> Pairing.solve(settings, other, vise))
                    .toList(),
                PairingMerit.OF_MACHINES);
    print(
        () -> ExplanationJson.of(explanation, onMachine, ofVise),
        columns -> {
          ExplainFacts facts =
              new ExplainFacts(
                  unit,
                  settings,
                  explanation,
                  onMachine,
                  ofVise,
                  Facts.warnings(settings, machine, vise));
          return all
              ? ExplanationText.lines(facts, columns)
              : ExplanationBrief.lines(facts, columns);
        });
  }

  private void print(Supplier<String> forPrograms, IntFunction<List<String>> forPeople) {
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.print(forPrograms.get());
      out.flush();
    } else {
      forPeople.apply(Terminal.columns()).forEach(out::println);
    }
  }
}
