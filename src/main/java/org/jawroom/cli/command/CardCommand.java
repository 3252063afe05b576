package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jawroom.app.choice.Pairs;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.input.PrintedNames;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.run.CardSubjects;
import org.jawroom.app.run.Facts;
import org.jawroom.cli.option.AtOption;
import org.jawroom.cli.option.SetOption;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Output;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.report.card.CardPaper;
import org.jawroom.report.card.CardStack;
import org.jawroom.report.card.CheckSheet;
import org.jawroom.report.card.SetupCards;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.xlsx.RunFacts;
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

/** {@code jawroom card}: a setup page for each pairing that has a place. */
@Command(
    name = "card",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Writes a setup card as PDF, two pages for each vise.",
      "The card shows the place of the vise and its range, bolts and torque, the gaps"
          + " to check before the first run, and cautions. A vise without a place on the"
          + " machine gets no card."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom card shop.xlsx \"knee mill\" \"plain 125\"",
      "  jawroom card tables \"knee mill\" \"plain 125\" \"toolroom 80\" --paper letter",
      "  jawroom card shop.xlsx \"knee mill\" \"plain 125\" --checks checks.csv",
      "  jawroom card shop.xlsx \"knee mill\" \"plain 125\" --at \"front, left 242.5, front 245\"",
      "  jawroom card shop.xlsx \"knee mill\" --set \"two at once\"",
      "",
      "Exit status: 0 at least one card was written; 1 the tables were refused; 2 wrong"
          + " use, no such"
          + " machine, vise or set, or no card to write; 3 a file could not be read or written.",
    })
public final class CardCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      index = "0",
      paramLabel = "INPUT",
      description = "a folder of CSV files or an XLSX workbook")
  private Path input;

  @Parameters(index = "1", paramLabel = "MACHINE", description = "its name in the tables")
  private String machineName;

  @Parameters(
      index = "2..*",
      arity = "0..*",
      paramLabel = "VISE",
      description = "its name in the tables; one card for each name; left out with --set")
  private List<String> viseNames = List.of();

  @Option(
      names = {"-o", "--output"},
      order = 1,
      paramLabel = "FILE.pdf",
      defaultValue = "card.pdf",
      description = "the PDF to write (default: ${DEFAULT-VALUE})")
  private Path output;

  @Option(
      names = "--paper",
      order = 2,
      paramLabel = "a4|letter",
      description = "the paper size (default: a4; letter where people read inches)")
  private String paper;

  @Option(
      names = "--job",
      order = 3,
      paramLabel = "NAME",
      description =
          "a job of the tables: the card shows its place, its opening and how the part sits")
  private String jobName;

  @Option(
      names = "--checks",
      order = 4,
      paramLabel = "FILE.csv",
      description =
          "also write the gaps of the cards as rows of the table checks, to fill in what is found")
  private Path checks;

  @Option(
      names = "--count",
      order = 5,
      paramLabel = "N",
      defaultValue = "1",
      description = "so many vises of the kind side by side, all on one card (default: 1)")
  private int count;

  @Option(
      names = "--set",
      order = 6,
      paramLabel = "NAME",
      description =
          "a set of the tables: a page of the whole table, then the cards of all its vises")
  private String setName;

  @Mixin private AtOption at;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    SetOption.checkVise(spec, setName, viseNames.isEmpty() ? null : viseNames.get(0));
    if (setName != null && (jobName != null || count > 1)) {
      throw new ParameterException(
          spec.commandLine(), "--set names how many of which vises: leave out --job and --count.");
    }
    at.checkAlone(setName != null || jobName != null || count > 1 || viseNames.size() > 1);
    Output.isFile(spec, output, ".pdf");
    if (checks != null) {
      Output.isFile(spec, checks, ".csv");
    }
    if (count < 1) {
      throw new ParameterException(spec.commandLine(), "--count takes a whole number from 1 up.");
    }
    if (count > 1 && jobName != null) {
      throw new ParameterException(
          spec.commandLine(),
          "--job shows where one vise holds the part: leave out --count or --job.");
    }
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    Output.check(spec, SetupCards.destination(output), Input.files(input, reading));
    if (checks != null) {
      Output.check(spec, CheckSheet.destination(checks), Input.files(input, reading));
    }
    Shop shop = reading.shop().get();
    Pairs pairs = new Pairs(shop, err);
    Optional<Machine> machine = pairs.machine(machineName);
    if (machine.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    CardPaper sheet = sheet(PeopleUnits.of(reading, machine.get()));
    if (setName != null) {
      return writeSet(reading, shop, machine.get(), sheet);
    }
    List<Optional<Vise>> vises = viseNames.stream().map(pairs::vise).distinct().toList();
    return vises.contains(Optional.<Vise>empty())
        ? ExitStatus.WRONG_USE
        : write(reading, shop, machine.get(), vises.stream().map(Optional::get).toList(), sheet);
  }

  private CardPaper sheet(PeopleUnit unit) {
    return paper == null
        ? CardPaper.of(unit)
        : CardPaper.named(paper)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--paper takes a4 or letter, not " + paper + "."));
  }

  private int write(Reading reading, Shop shop, Machine machine, List<Vise> vises, CardPaper sheet)
      throws IOException {
    PrintedNames printed = new PrintedNames(reading.origins(), spec.commandLine().getErr());
    if (!isReadable(machine.name())) {
      return ExitStatus.WRONG_USE;
    }
    Machine named = printed.of(machine);
    Optional<Job> job = Optional.empty();
    if (jobName != null) {
      job = new Pairs(shop, spec.commandLine().getErr()).job(jobName);
      if (job.isEmpty()) {
        return ExitStatus.WRONG_USE;
      }
    }
    PeopleUnit unit = PeopleUnits.of(reading, machine);
    List<CardSubject> cards = new ArrayList<>();
    List<CardSubject> withOwnNames = new ArrayList<>();
    for (Vise vise : vises) {
      if (!isReadable(vise.name())) {
        continue;
      }
      Vise printable = printed.of(vise);
      Optional<CardSubject> card = subject(reading, named, printable, job, unit);
      card.ifPresent(cards::add);
      if (card.isPresent() && checks != null) {
        subject(reading, machine, vise, job, unit).ifPresent(withOwnNames::add);
      }
    }
    if (cards.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    RunFacts facts = facts(reading, shop, cards, unit);
    SetupCards.write(output, sheet, shop.settings(), cards, facts);
    written(
        unit,
        cards.size() + (cards.size() == 1 ? " card" : " cards") + " of two pages",
        withOwnNames);
    return ExitStatus.DONE;
  }

  /** Whether a name can be printed; a line says so if not. */
  private boolean isReadable(String name) {
    if (!PrintedNames.isReadable(name)) {
      noCard("\"" + name + "\"", PrintedNames.advice(name));
      return false;
    }
    return true;
  }

  private static RunFacts facts(
      Reading reading, Shop shop, List<CardSubject> cards, PeopleUnit unit) {
    List<Outcome> outcomes = cards.stream().map(CardSubject::outcome).toList();
    return Facts.ofPairings(reading, shop, outcomes).in(unit);
  }

  /** Writes the rows of checks, if they are asked for, and prints what was written. */
  private void written(PeopleUnit unit, String pages, List<CardSubject> withOwnNames)
      throws IOException {
    spec.commandLine().getOut().println("Written: " + output + " (" + pages + ")");
    if (checks != null) {
      withOwnNames.stream()
          .map(card -> card.outcome().vise())
          .filter(Vise::isTurned)
          .map(Vise::name)
          .distinct()
          .forEach(
              name ->
                  spec.commandLine()
                      .getErr()
                      .println(
                          "No rows of checks for \""
                              + name
                              + "\": checks are made with the jaws square."));
      CheckSheet sheetToFill = CheckSheet.of(unit, withOwnNames);
      sheetToFill.write(checks);
      spec.commandLine().getOut().println(sheetToFill.written(checks));
    }
  }

  private int writeSet(Reading reading, Shop shop, Machine machine, CardPaper sheet)
      throws IOException {
    PrintWriter err = spec.commandLine().getErr();
    Optional<ViseSet> set = new Pairs(shop, err).set(setName);
    if (set.isEmpty()
        || !isReadable(machine.name())
        || !set.get().members().stream().allMatch(one -> isReadable(one.vise().name()))) {
      return ExitStatus.WRONG_USE;
    }
    PrintedNames printed = new PrintedNames(reading.origins(), err);
    Machine named = printed.of(machine);
    ViseSet printable = printed.of(set.get());
    Settings settings =
        PrintedNames.settings(shop.settings(), machine, named, set.get(), printable);
    SetOutcome outcome = SetPairing.solve(settings, named, printable);
    if (outcome.fits() != SetOutcome.Fits.YES) {
      noCard(
          "set \"" + setName + "\" on \"" + machine.name() + "\"",
          "jawroom explain --set says why.");
      return ExitStatus.WRONG_USE;
    }
    PeopleUnit unit = PeopleUnits.of(reading, machine);
    List<CardSubject> cards = CardSubjects.ofSet(settings, outcome);
    SetupCards.write(
        output, sheet, settings, CardStack.of(outcome, cards), facts(reading, shop, cards, unit));
    written(
        unit,
        "a page of the table, then " + cards.size() + " cards of two pages",
        checks == null
            ? List.of()
            : CardSubjects.ofSet(settings, SetPairing.solve(settings, machine, set.get())));
    return ExitStatus.DONE;
  }

  private Optional<CardSubject> subject(
      Reading reading, Machine machine, Vise vise, Optional<Job> job, PeopleUnit unit) {
    Settings settings = reading.shop().orElseThrow().settings();
    CardSubjects subjects = new CardSubjects(settings, machine, unit, this::noCard);
    if (at.isGiven()) {
      PrintWriter err = spec.commandLine().getErr();
      return at.outcome(reading, settings, machine, vise, err).flatMap(subjects::ofStanding);
    }
    if (job.isPresent()) {
      return subjects.ofJob(vise, job.get());
    }
    return count > 1 ? subjects.ofRow(vise, count) : subjects.ofPairing(vise);
  }

  private void noCard(String of, String why) {
    spec.commandLine().getErr().println("No card for " + of + ": " + why);
  }
}
