package org.jawroom.report.plan;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.ShopCell;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.Unheld;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.WrappedLines;

/** A plan for a terminal of 80 columns. */
public final class PlanText {
  private static final int COLUMNS = 80;
  private static final int DETAIL = 6;

  private final CellPlan plan;
  private final PlanWords words;
  private final List<String> lines = new ArrayList<>();

  private PlanText(CellPlan plan, PeopleUnit unit) {
    this.plan = plan;
    this.words = new PlanWords(unit, plan, " x ");
  }

  /**
   * Returns the lines, without line ends and without characters that could control a terminal.
   *
   * @param reports the files written
   */
  public static List<String> lines(CellPlan plan, PeopleUnit unit, List<Path> reports) {
    PlanText text = new PlanText(plan, unit);
    text.machines();
    text.purchases();
    text.jobs();
    text.add(0, text.words.statement());
    if (!text.words.notCovered().isEmpty()) {
      text.add(0, text.words.notCovered());
    }
    if (!text.words.advice().isEmpty()) {
      text.add(0, text.words.advice());
    }
    // Not wrapped, so that a path can be copied.
    reports.forEach(report -> text.lines.add(PlainText.forTerminal("Written: " + report)));
    return text.lines;
  }

  private void machines() {
    List<CellPlan.Row> rows = plan.rows();
    long equipped = rows.stream().filter(row -> row.given().isPresent()).count();
    add(
        0,
        "A vise for "
            + equipped
            + " of "
            + rows.size()
            + (rows.size() == 1 ? " machine:" : " machines:"));
    rows.forEach(this::machine);
  }

  private void machine(CellPlan.Row row) {
    StringBuilder line = new StringBuilder(plan.machine(row).name()).append(": ");
    if (row.given().isEmpty()) {
      line.append("none, ").append(words.bare(row));
    } else if (plan.set(row).isPresent()) {
      line.append(words.vise(row)).append(", ").append(words.margin(row));
      append(line, words.verdict(plan.set(row).get()));
      append(line, words.missed(row));
      append(line, words.bought(row).isEmpty() ? "" : "buy " + words.bought(row));
    } else {
      CellPairing pairing = plan.pairing(row);
      line.append(words.vise(row)).append(", ").append(words.margin(row));
      append(line, words.verdict(pairing));
      append(line, words.besides(row));
      append(line, words.keepTo(pairing));
      append(line, words.missed(row));
      append(line, words.bought(row).isEmpty() ? "" : "buy " + words.bought(row));
    }
    append(line, words.change(row));
    add(2, line.toString());
  }

  private static void append(StringBuilder line, String more) {
    if (!more.isEmpty()) {
      line.append("; ").append(more);
    }
  }

  private void purchases() {
    if (plan.plan().purchases().isEmpty()) {
      return;
    }
    add(0, "To buy, " + ShopCell.money(plan.plan().cost()) + " together:");
    for (Purchase purchase : plan.plan().purchases()) {
      add(2, words.thing(purchase) + ", " + ShopCell.money(purchase.price()));
    }
  }

  private void jobs() {
    if (plan.of().shop().jobs().isEmpty()) {
      return;
    }
    add(0, "Held: " + words.held());
    if (!words.unchecked().isEmpty()) {
      add(0, "Held as far as the tables say:");
      words.unchecked().forEach(line -> add(2, line));
    }
    if (!words.inDoubt().isEmpty()) {
      add(0, "Held, but in doubt:");
      words.inDoubt().forEach(line -> add(2, line));
    }
    if (plan.plan().unheld().isEmpty()) {
      return;
    }
    add(0, "Not held:");
    for (Unheld unheld : plan.plan().unheld()) {
      add(2, plan.of().shop().jobs().get(unheld.job()).name() + ": " + words.remedy(unheld));
    }
  }

  /** ASCII except for names. */
  private void add(int indent, String text) {
    lines.addAll(
        WrappedLines.wrapped(
            PlainText.forTerminal(text), indent, indent == 0 ? 0 : DETAIL, COLUMNS));
  }
}
