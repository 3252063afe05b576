package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.input.PrintedNames;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Facts;
import org.jawroom.app.search.Deadline;
import org.jawroom.app.search.KeptPlan;
import org.jawroom.app.search.PlanSearch;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.ShopCell;
import org.jawroom.cli.option.Budget;
import org.jawroom.cli.option.CellChoice;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Threads;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Foreseen;
import org.jawroom.cli.refusal.Output;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.plan.model.Wishes;
import org.jawroom.report.card.CardPaper;
import org.jawroom.report.card.SetupCards;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.plan.PlanReports;
import org.jawroom.report.plan.PlanText;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Shop;
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

/** {@code jawroom plan}: one kind of vise for each machine of a cell. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Chooses one kind of vise, and how many, for each machine, from the vises in the house.",
      "What counts, in this order: the most pieces of the jobs held; the most machines"
          + " equipped; the most of them with a comfortable margin and a place where the vise"
          + " can be tapped square; the widest openings, added up; the widest jaws, added up;"
          + " the fewest changes from what stands there now (the table standing, or --keep). With"
          + " --buy the lowest price comes second.",
      "Reports whether a better plan is possible, which jobs rest on something unchecked, which no"
          + " machine holds, and the cheapest remedy for each of those. Writes plan.csv and"
          + " plan.xlsx."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  jawroom plan shop.xlsx",
      "  jawroom plan shop.xlsx --machines \"knee mill; bench mill\" --cards",
      "  jawroom plan shop.xlsx --buy --budget 5000 --keep reports/plan.csv -o next",
      "",
      "Exit status: 0 done; 1 the tables or the plan to keep were refused; 2 wrong use,"
          + " no such machine, or no"
          + " plan within the time limit; 3 a file could not be read or written.",
    })
public final class PlanCommand implements Callable<Integer> {
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
      description = "the folder for the plan (default: ${DEFAULT-VALUE})")
  private Path output;

  @Option(
      names = "--machines",
      order = 2,
      paramLabel = "LIST",
      description =
          "the machines of the cell, with ; between (default: all owned; with --buy"
              + " candidates too)")
  private String machines;

  @Option(
      names = "--keep",
      order = 3,
      paramLabel = "PLAN.csv",
      description =
          "what stands where now, instead of the table standing: of equally good plans, choose"
              + " the one with the fewest changes")
  private Path keep;

  @Option(
      names = "--buy",
      order = 4,
      description =
          "also choose from what has a price: the cheapest purchase with which the most"
              + " jobs are held")
  private boolean buy;

  @Option(
      names = "--budget",
      order = 5,
      paramLabel = "N",
      description = "the most that may be spent, with --buy (default: no limit)")
  private String budget;

  @Option(
      names = "--time-limit",
      order = 6,
      paramLabel = "SECONDS",
      description =
          "the longest time until the files are written; then the best plan found so far is written"
              + " (default: no limit)")
  private Long seconds;

  @Option(
      names = "--cards",
      order = 7,
      description = "also write cards.pdf, the setup cards of the plan")
  private boolean cards;

  @Mixin private Threads threads;

  @Override
  public Integer call() throws UnreadableInput, IOException {
    Deadline deadline = Deadline.in(Optional.ofNullable(seconds));
    int workers = threads.count();
    Output.isFolder(spec, output);
    Budget money =
        Budget.of(spec.commandLine(), buy, Optional.ofNullable(budget), SettingOptions.given(spec));
    if (seconds != null && seconds < 0) {
      throw new ParameterException(
          spec.commandLine(), "--time-limit takes whole seconds from 0 up.");
    }
    PrintWriter err = spec.commandLine().getErr();
    Reading reading = Input.read(input, SettingOptions.given(spec), err);
    if (reading.shop().isEmpty()) {
      return Input.refuse(reading, err);
    }
    List<Path> inputs = new ArrayList<>(Input.files(input, reading));
    if (keep != null) {
      inputs.add(keep);
    }
    Output.check(spec, PlanReports.destination(output, cards), inputs);
    CellChoice choice = new CellChoice(reading.shop().get(), err);
    Optional<List<Machine>> chosen = choice.machines(Optional.ofNullable(machines), buy);
    if (chosen.isEmpty()) {
      return ExitStatus.WRONG_USE;
    }
    Shop shop = ShopCell.planned(choice.shop(), chosen.get());
    Optional<Map<Integer, List<Integer>>> before = KeptPlan.standing(shop);
    if (keep != null) {
      before = KeptPlan.read(keep, shop, err);
      if (before.isEmpty()) {
        return ExitStatus.REFUSED;
      }
    }
    Foreseen.plan(shop).check(spec, "take fewer machines with --machines");
    Optional<CellPlan> plan =
        new PlanSearch(money.of(Wishes.none()), before, workers, deadline)
            .of(shop, Progress.on(err));
    if (plan.isEmpty()) {
      err.println(
          "No plan was found within --time-limit "
              + seconds
              + ". Nothing was written; give it more time, or fewer --machines.");
      return ExitStatus.WRONG_USE;
    }
    publish(reading, plan.get());
    return ExitStatus.DONE;
  }

  private void publish(Reading reading, CellPlan plan) throws IOException {
    Shop shop = plan.of().shop();
    List<Outcome> outcomes = plan.of().pairings().stream().map(CellPairing::outcome).toList();
    RunFacts facts = Facts.of(reading, shop, outcomes);
    Optional<byte[]> pdf = cards ? cards(reading, plan, facts) : Optional.empty();
    List<Path> written = PlanReports.write(output, plan, facts, pdf);
    PrintWriter out = spec.commandLine().getOut();
    PlanText.lines(plan, facts.unit(), written).forEach(out::println);
  }

  /**
   * The setup cards, a page for each machine that gets a vise; a pairing without a card is
   * reported.
   */
  private Optional<byte[]> cards(Reading reading, CellPlan plan, RunFacts facts)
      throws IOException {
    Shop shop = plan.of().shop();
    PrintWriter err = spec.commandLine().getErr();
    PrintedNames printed = new PrintedNames(reading.origins(), err);
    List<CardSubject> pages = new ArrayList<>();
    for (CellPlan.Row row : plan.rows()) {
      if (row.given().isPresent()) {
        Outcome outcome = plan.pairing(row).outcome();
        Optional<String> unreadable =
            Stream.of(outcome.machine().name(), outcome.vise().name())
                .filter(name -> !PrintedNames.isReadable(name))
                .findFirst();
        if (unreadable.isPresent()) {
          err.println(
              "No card for \"" + unreadable.get() + "\": " + PrintedNames.advice(unreadable.get()));
        } else if (CardSubject.isPossible(outcome)) {
          Machine machine = printed.of(outcome.machine());
          Vise vise = printed.of(outcome.vise());
          List<String> warnings =
              Facts.warnings(shop.settings(), outcome.machine(), outcome.vise());
          int count = Math.max(1, plan.sideBySide(row).size());
          if (count > 1) {
            pages.add(
                CardSubject.ofRow(
                    shop.settings(),
                    Pairing.solved(shop.settings(), machine, vise),
                    count,
                    warnings));
          } else {
            CardSubject.of(shop.settings(), machine, vise, warnings).ifPresent(pages::add);
          }
        } else {
          err.println(
              "No card for \""
                  + outcome.vise().name()
                  + "\" on \""
                  + outcome.machine().name()
                  + "\": it stands there for its jobs only, each in its own place; see the sheet"
                  + " Jobs.");
        }
      }
    }
    // They are printed together, so all have the same paper; each has its machine's unit.
    CardPaper paper = CardPaper.of(facts.unit());
    return pages.isEmpty()
        ? Optional.empty()
        : Optional.of(
            SetupCards.bytes(
                paper,
                shop.settings(),
                pages,
                machine -> facts.in(PeopleUnits.of(reading, machine))));
  }
}
