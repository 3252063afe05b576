package org.jawroom.app.run;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jawroom.app.input.PeopleUnits;
import org.jawroom.app.input.PrintedNames;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.CellSet;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.set.SetPairing;
import org.jawroom.report.card.CardPaper;
import org.jawroom.report.card.CardStack;
import org.jawroom.report.card.SetupCards;
import org.jawroom.report.card.statement.CardSubject;
import org.jawroom.report.xlsx.RunFacts;
import org.jawroom.shop.Settings;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.Reading;

/** The setup cards of a plan: those of each table, machine by machine. */
public final class PlanCards {
  private final CellPlan plan;
  private final Settings settings;
  private final PrintedNames printed;
  private final PrintWriter err;
  private final List<CardStack> stacks = new ArrayList<>();

  private PlanCards(Reading reading, CellPlan plan, PrintWriter err) {
    this.plan = plan;
    this.settings = plan.of().shop().settings();
    this.printed = new PrintedNames(reading.origins(), err);
    this.err = err;
  }

  /** The bytes of the document; empty if there is no card. A vise without one is reported. */
  public static Optional<byte[]> bytes(
      Reading reading, CellPlan plan, RunFacts facts, PrintWriter err) throws IOException {
    PlanCards cards = new PlanCards(reading, plan, err);
    plan.rows().stream().filter(row -> row.given().isPresent()).forEach(cards::add);
    // They are printed together, so all have the same paper; each has its machine's unit.
    CardPaper paper = CardPaper.of(facts.unit());
    return cards.stacks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            SetupCards.bytes(
                paper,
                cards.settings,
                cards.stacks,
                machine -> facts.in(PeopleUnits.of(reading, machine))));
  }

  private void add(CellPlan.Row row) {
    Machine machine = plan.machine(row);
    Optional<CellSet> set = plan.set(row);
    List<Vise> vises =
        set.isPresent()
            ? set.get().row().stands().stream().map(SetOutcome.Stand::vise).toList()
            : List.of(plan.pairing(row).outcome().vise());
    Optional<String> unreadable =
        Stream.concat(Stream.of(machine.name()), vises.stream().map(Vise::name))
            .filter(name -> !PrintedNames.isReadable(name))
            .findFirst();
    if (unreadable.isPresent()) {
      noCard("\"" + unreadable.get() + "\"", PrintedNames.advice(unreadable.get()));
    } else if (set.isPresent()) {
      add(machine, set.get().row().set());
    } else if (CardSubject.isPossible(plan.pairing(row).outcome())) {
      add(plan.pairing(row).outcome(), Math.max(1, plan.sideBySide(row).size()));
    } else {
      noCard(
          "\"" + vises.get(0).name() + "\" on \"" + machine.name() + "\"",
          "it stands there for its jobs only, each in its own place; see the sheet Jobs.");
    }
  }

  private void add(Outcome outcome, int count) {
    Machine machine = printed.of(outcome.machine());
    Vise vise = printed.of(outcome.vise());
    List<String> warnings = Facts.warnings(settings, outcome.machine(), outcome.vise());
    Optional<CardSubject> card =
        count > 1
            ? Optional.of(
                CardSubject.ofRow(
                    settings, Pairing.solved(settings, machine, vise), count, warnings))
            : CardSubject.of(settings, machine, vise, warnings);
    card.ifPresent(one -> stacks.add(CardStack.of(List.of(one))));
  }

  private void add(Machine machine, ViseSet set) {
    Machine named = printed.of(machine);
    ViseSet printable = printed.of(set);
    Settings itsSettings = PrintedNames.settings(settings, machine, named, set, printable);
    SetOutcome row = SetPairing.solve(itsSettings, named, printable);
    stacks.add(CardStack.of(row, CardSubjects.ofSet(itsSettings, row)));
  }

  private void noCard(String of, String why) {
    err.println("No card for " + of + ": " + why);
  }
}
