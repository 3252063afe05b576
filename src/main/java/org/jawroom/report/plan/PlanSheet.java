package org.jawroom.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.CellSet;
import org.jawroom.cell.ShopCell;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.plan.model.Purchase;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.Words;
import org.jawroom.report.xlsx.ListSheet;
import org.jawroom.report.xlsx.ListSheet.Heading;
import org.jawroom.report.xlsx.Styles;

/** The sheet <i>Plan</i>: the vise for each machine and where it stands; below it what to buy. */
final class PlanSheet {
  static final String NAME = "Plan";

  private static final List<Heading> HEADINGS =
      List.of(
          new Heading("Machine", 19),
          new Heading("Vise", 21),
          new Heading("How many", 10),
          new Heading("Margin", 9),
          new Heading("Limited by", 21),
          new Heading("Where it stands", 54),
          new Heading("Jobs it holds", 30),
          new Heading("To buy", 13),
          new Heading("Cost", 10),
          new Heading("Mind", 26));

  private static final List<String> PURCHASES = List.of("To buy", "What", "How many", "Price");

  private final CellPlan plan;
  private final Styles styles;
  private final PlanWords words;
  private final ListSheet list;

  private PlanSheet(SXSSFWorkbook book, Styles styles, CellPlan plan) {
    this.plan = plan;
    this.styles = styles;
    this.words = new PlanWords(styles.unit(), plan, " × ");
    this.list = new ListSheet(book, styles, NAME, HEADINGS, 1, plan.plan().purchases().isEmpty());
  }

  static void add(SXSSFWorkbook book, Styles styles, CellPlan plan) {
    PlanSheet sheet = new PlanSheet(book, styles, plan);
    sheet.list.head(sheet.title(), sheet.remark());
    plan.rows().forEach(sheet::entry);
    if (!plan.plan().purchases().isEmpty()) {
      sheet.purchases();
    }
    sheet.list.finish();
  }

  private String title() {
    if (!plan.plan().isProven()) {
      return "Plan: a better plan may exist";
    }
    return plan.of().kinds() == 1
        ? "Plan: no better plan exists"
        : "Plan: no better plan exists of what was tried";
  }

  private String remark() {
    List<String> sentences = new ArrayList<>();
    sentences.add(words.statement());
    if (!words.notCovered().isEmpty()) {
      sentences.add(words.notCovered());
    }
    if (!words.advice().isEmpty()) {
      sentences.add(words.advice());
    }
    if (!plan.of().shop().jobs().isEmpty()) {
      sentences.add("Held: " + words.held() + ".");
      if (!words.unchecked().isEmpty()) {
        sentences.add(
            words.unchecked().size() + " of them rest on something unchecked: see the sheet Jobs.");
      }
    }
    if (!words.inDoubt().isEmpty()) {
      sentences.add(words.inDoubt().size() + " of them are held in doubt: see the sheet Jobs.");
    }
    sentences.add("Lengths in " + styles.unit().plural() + ", margins rounded toward less.");
    return String.join(" ", sentences);
  }

  private void entry(CellPlan.Row row) {
    Optional<CellSet> set = plan.set(row);
    if (set.isPresent()) {
      for (int at = 0; at < set.get().row().stands().size(); at++) {
        entry(row, set.get(), at);
      }
      return;
    }
    list.entry();
    list.text(plan.machine(row).name());
    if (row.given().isEmpty()) {
      list.text("none: " + words.bare(row), styles.entry(Finding.NO_MOUNT));
      list.blank(HEADINGS.size() - 3);
      list.text(words.toDo(row));
      return;
    }
    CellPairing pairing = plan.pairing(row);
    Recommendation place = pairing.place().orElseThrow();
    Finding finding = finding(pairing);
    list.text(finding.sign() + " " + pairing.outcome().vise().name(), styles.entry(finding));
    list.number(row.given().get().count(), "0");
    list.length(pairing.margin(), Rounding.DOWN);
    list.text(place.limit().map(Words::limit).orElse("nothing listed to hit"));
    list.text(String.join("\n", words.where(row, place)));
    list.text(
        pairing.held().stream().map(job -> job.job().name()).collect(Collectors.joining("; ")));
    list.text(words.bought(row));
    price(row.cost());
    list.text(mind(row, pairing));
  }

  /** A vise of several kinds; what is to be said of all of them stands with the first. */
  private void entry(CellPlan.Row row, CellSet set, int at) {
    SetOutcome.Stand stand = set.row().stands().get(at);
    Recommendation place = stand.place();
    Finding finding = Finding.of(stand.placed());
    list.entry();
    list.text(plan.machine(row).name(), at == 0 ? styles.entry() : styles.repeated());
    list.text(finding.sign() + " " + stand.vise().name(), styles.entry(finding));
    list.number(1, "0");
    list.length(place.margin(), Rounding.DOWN);
    list.text(place.limit().map(Words::limit).orElse("nothing listed to hit"));
    list.text(String.join("\n", words.where(set, at)));
    list.text(
        set.held().get(at).stream().map(job -> job.job().name()).collect(Collectors.joining("; ")));
    boolean isMachine = at == 0 && row.boughtMachine();
    boolean isVise = plan.isBought(row, stand.vise());
    list.text(PlanWords.bought(isMachine, isVise ? 1 : 0));
    price((isMachine ? row.machineCost() : 0) + (isVise ? plan.price(stand.vise()) : 0));
    list.text(
        at > 0
            ? ""
            : Stream.concat(words.minds(set).stream(), Stream.of(words.toDo(row)))
                .filter(words -> !words.isEmpty())
                .collect(Collectors.joining("; ")));
  }

  private String mind(CellPlan.Row row, CellPairing pairing) {
    List<String> mind = new ArrayList<>();
    mind.add(words.several(row));
    mind.add(words.besides(row));
    mind.add(words.keepTo(pairing));
    mind.addAll(new Words(styles.unit()).marks(pairing.outcome()));
    mind.add(words.toDo(row));
    return mind.stream().filter(words -> !words.isEmpty()).collect(Collectors.joining("; "));
  }

  private static Finding finding(CellPairing pairing) {
    return pairing.isForItsJobsOnly() ? Finding.LIMITED : Finding.of(pairing.outcome());
  }

  private void purchases() {
    list.below(
        "To buy",
        "The cheapest with which the jobs held are held: "
            + ShopCell.money(plan.plan().cost())
            + " together.",
        PURCHASES);
    for (Purchase purchase : plan.plan().purchases()) {
      list.entry();
      boolean vise = purchase.what() == Purchase.What.VISE;
      list.text(
          vise
              ? plan.of().shop().vises().get(purchase.index()).name()
              : plan.of().shop().machines().get(purchase.index()).name());
      list.text(vise ? "vise" : "machine");
      list.number(purchase.count(), "0");
      price(purchase.price());
    }
  }

  private void price(long coins) {
    if (coins == 0) {
      list.length(OptionalLong.empty(), Rounding.DOWN);
    } else {
      // Exact: a double holds every possible whole number of cents.
      list.number(coins / 100.0, coins % 100 == 0 ? "#,##0" : "#,##0.00");
    }
  }
}
