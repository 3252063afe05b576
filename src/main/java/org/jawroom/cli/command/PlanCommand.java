package org.jawroom.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jawroom.app.input.Input;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.Progress;
import org.jawroom.app.run.Facts;
import org.jawroom.app.run.PlanCards;
import org.jawroom.app.search.Deadline;
import org.jawroom.app.search.KeptPlan;
import org.jawroom.app.search.PlanSearch;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.CellSets;
import org.jawroom.cell.ShopCell;
import org.jawroom.cli.option.Budget;
import org.jawroom.cli.option.CellChoice;
import org.jawroom.cli.option.SettingOptions;
import org.jawroom.cli.option.Threads;
import org.jawroom.cli.option.VersionLine;
import org.jawroom.cli.refusal.Foreseen;
import org.jawroom.cli.refusal.Output;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.plan.model.Wishes;
import org.jawroom.report.plan.PlanReports;
import org.jawroom.report.plan.PlanText;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.UnreadableInput;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code jawroom plan}: one kind of vise, or a few, for each machine of a cell. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    versionProvider = VersionLine.class,
    modelTransformer = SettingOptions.class,
    sortOptions = false,
    description = {
      "Chooses one kind of vise, and how many, for each machine, from the vises in the house; with"
          + " --kinds also several kinds side by side, one vise each.",
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
      "  jawroom plan shop.xlsx --kinds 2",
      "  jawroom plan shop.xlsx --buy --budget 5000 --keep reports/plan.csv -o next",
      "",
      "Exit status: 0 done; 1 the tables or the plan to keep were refused; 2 wrong use,"
          + " no such machine, or no"
          + " plan within the time limit; 3 a file could not be read or written.",
    })
public final class PlanCommand implements Callable<Integer> {

  /**
   * Trying a set takes a millisecond, and a program with a tenth of so many is solved in a minute.
   */
  private static final long MOST_SETS = 20_000;

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
      names = "--kinds",
      order = 3,
      paramLabel = "K",
      defaultValue = "1",
      description =
          "the most kinds of vise on a table, 1 to 4; of several one vise each, side by side; more"
              + " than 2 may take a minute (default: ${DEFAULT-VALUE})")
  private int kinds;

  @Option(
      names = "--keep",
      order = 4,
      paramLabel = "PLAN.csv",
      description =
          "what stands where now, instead of the table standing: of equally good plans, choose"
              + " the one with the fewest changes")
  private Path keep;

  @Option(
      names = "--buy",
      order = 5,
      description =
          "also choose from what has a price: the cheapest purchase with which the most"
              + " jobs are held")
  private boolean buy;

  @Option(
      names = "--budget",
      order = 6,
      paramLabel = "N",
      description = "the most that may be spent, with --buy (default: no limit)")
  private String budget;

  @Option(
      names = "--time-limit",
      order = 7,
      paramLabel = "SECONDS",
      description =
          "the longest time until the files are written; then the best plan found so far is written"
              + " (default: no limit)")
  private Long seconds;

  @Option(
      names = "--cards",
      order = 8,
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
    if (kinds < 1 || kinds > CellSets.MOST_KINDS) {
      throw new ParameterException(
          spec.commandLine(),
          "--kinds takes a whole number from 1 to " + CellSets.MOST_KINDS + ".");
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
    Optional<Map<Integer, List<Integer>>> before = KeptPlan.standing(shop, kinds);
    if (keep != null) {
      before = KeptPlan.read(keep, shop, kinds, err);
      if (before.isEmpty()) {
        return ExitStatus.REFUSED;
      }
    }
    checkSets(shop);
    Foreseen.plan(shop, CellSets.most(shop, kinds))
        .check(spec, "take fewer machines with --machines");
    Optional<CellPlan> plan =
        new PlanSearch(money.of(Wishes.none()), kinds, before, workers, deadline)
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

  private void checkSets(Shop shop) {
    long sets = CellSets.most(shop, kinds);
    if (sets > MOST_SETS) {
      throw new ParameterException(
          spec.commandLine(),
          "--kinds "
              + kinds
              + " would try up to "
              + sets
              + " sets of vises, more than "
              + MOST_SETS
              + ". Nothing was written; take fewer kinds, or fewer machines with --machines.");
    }
  }

  private void publish(Reading reading, CellPlan plan) throws IOException {
    Shop shop = plan.of().shop();
    List<Outcome> outcomes = plan.of().pairings().stream().map(CellPairing::outcome).toList();
    RunFacts facts = Facts.of(reading, shop, outcomes);
    Optional<byte[]> pdf =
        cards
            ? PlanCards.bytes(reading, plan, facts, spec.commandLine().getErr())
            : Optional.empty();
    List<Path> written = PlanReports.write(output, plan, facts, pdf);
    PrintWriter out = spec.commandLine().getOut();
    PlanText.lines(plan, facts.unit(), written).forEach(out::println);
  }
}
