package org.jawroom.report.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jawroom.cell.CellPairing;
import org.jawroom.cell.CellPlan;
import org.jawroom.cell.CellSet;
import org.jawroom.cell.ShopCell;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.search.SideBySide;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.placement.space.Place;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.Unheld;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.report.format.Rounding;
import org.jawroom.report.set.SetWords;
import org.jawroom.report.wording.CaveatWords;
import org.jawroom.report.wording.Finding;
import org.jawroom.report.wording.JobWords;
import org.jawroom.report.wording.Words;
import org.jawroom.report.wording.place.TapeWords;

/**
 * A plan in words, lengths in the chosen unit.
 *
 * @param times the sign between a count and what is counted
 */
record PlanWords(PeopleUnit unit, CellPlan plan, String times) {

  /** The largest number of blank columns named. */
  private static final int COLUMNS_NAMED = 3;

  /** {@code No better plan exists}, only if that is proven, with the order of the aims. */
  String statement() {
    String words = plan.plan().statement();
    return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  /** What to do about a plan that is not proven optimal; empty for one that is. */
  String advice() {
    return plan.plan().isProven() ? "" : "Give it more time: a greater --time-limit, or none.";
  }

  /**
   * What the proof does not cover where several kinds may stand on a table; empty where one may.
   */
  String notCovered() {
    return plan.of().kinds() == 1
        ? ""
        : "Not covered: of several kinds on a table one vise each was tried, in one row, the one with"
            + " the most to spare; in another row they might hold more jobs.";
  }

  /** {@code 2 × toolroom 80}; of several kinds {@code plain 125 + toolroom 80 side by side}. */
  String vise(CellPlan.Row row) {
    Optional<CellSet> set = plan.set(row);
    if (set.isPresent()) {
      return set.get().row().stands().stream()
          .map(stand -> stand.vise().name())
          .collect(Collectors.joining(" + ", "", " side by side"));
    }
    int count = row.given().orElseThrow().count();
    String name = plan.pairing(row).outcome().vise().name();
    return count == 1 ? name : count + times + name;
  }

  /** Why a machine has no vise. */
  String bare(CellPlan.Row row) {
    return switch (plan.whyBare(row)) {
      case NOTHING_FITS -> "no vise of this shop fits it";
      case NONE_LEFT -> "no vise that fits it is left";
      case NOT_SOUGHT -> "none found before time ran out";
      case NOT_BOUGHT -> "not bought";
    };
  }

  /**
   * {@code 12.3 mm to spare}; with several vises of a kind, the margin of one alone; of several
   * kinds the least of margins and gaps beyond the spacing.
   */
  String margin(CellPlan.Row row) {
    Optional<CellSet> set = plan.set(row);
    if (set.isPresent()) {
      return unit.text(set.get().row().least().orElseThrow(), Rounding.DOWN)
          + " "
          + unit.word()
          + " or more to spare";
    }
    return (row.given().orElseThrow().count() > 1 ? "one alone " : "") + margin(plan.pairing(row));
  }

  private String margin(CellPairing pairing) {
    return pairing.margin().isPresent()
        ? unit.text(pairing.margin().getAsLong(), Rounding.DOWN) + " " + unit.word() + " to spare"
        : Finding.FITS_BUT.words();
  }

  /** The restrictions to observe; empty if there are none. */
  String keepTo(CellPairing pairing) {
    if (pairing.isForItsJobsOnly()) {
      return "for its jobs only, each in its own place";
    }
    Interval all = pairing.outcome().vise().opening();
    Interval open = pairing.place().orElseThrow().openings();
    return open.equals(all)
        ? ""
        : Words.KEEP_OPEN
            + unit.brief(open.lo(), Rounding.UP)
            + " to "
            + unit.brief(open.hi(), Rounding.DOWN)
            + (pairing.held().isEmpty() ? "" : ", or stand it where its job says");
  }

  /** {@code awkward}, {@code in doubt}, and why it is no plain {@code fits}; else empty. */
  String verdict(CellPairing pairing) {
    List<String> words = new ArrayList<>();
    if (pairing.outcome().verdict() == Verdict.AWKWARD) {
      words.add(Finding.AWKWARD.brief());
    }
    if (!pairing.outcome().inDoubt().isEmpty()) {
      words.add("in doubt");
    }
    new CaveatWords(unit)
        .of(pairing.outcome()).stream()
            .skip(pairing.outcome().caveats().contains(Caveat.IN_DOUBT) ? 1 : 0)
            .forEach(words::add);
    return String.join(", ", words);
  }

  /** What the spindle misses of the work area, at most; empty if each place is that of a job. */
  String missed(CellPlan.Row row) {
    Optional<CellSet> set = plan.set(row);
    if (set.isPresent()) {
      return missed(set.get().row().stands().stream().map(SetOutcome.Stand::place));
    }
    CellPairing pairing = plan.pairing(row);
    return pairing.isForItsJobsOnly() ? "" : missed(pairing.place().stream());
  }

  private String missed(Stream<Recommendation> places) {
    return new Words(unit).missed(places.mapToLong(Recommendation::reachShortfall).max().orElse(0));
  }

  /** The verdict of a row of several kinds, and what is to be said of its places. */
  String verdict(CellSet set) {
    List<String> words = new ArrayList<>();
    if (set.row().stands().stream().anyMatch(stand -> !stand.handRoom())) {
      words.add(Finding.AWKWARD.brief());
    }
    set.row().stands().stream()
        .flatMap(stand -> stand.placed().caveats().stream())
        .distinct()
        .sorted()
        .map(CaveatWords::ofRow)
        .forEach(words::add);
    return String.join(", ", words);
  }

  /** The jobs that are held, but only as far as was checked; empty if there are none. */
  List<String> unchecked() {
    return plan.heldUnchecked().stream()
        .map(job -> plan.of().shop().jobs().get(job).name() + ": " + unchecked(plan.holding(job)))
        .toList();
  }

  /** The jobs that are held in doubt only, and why; empty if there are none. */
  List<String> inDoubt() {
    return plan.heldInDoubt().stream()
        .map(
            job ->
                plan.of().shop().jobs().get(job).name()
                    + ": "
                    + CaveatWords.suspects(plan.holding(job).get(0).inDoubt())
                    + " may be wrong")
        .toList();
  }

  /** What stays unchecked on the first machine that holds the job. */
  private static String unchecked(List<JobOutcome> holding) {
    return String.join("; ", JobWords.unchecked(holding.get(0)));
  }

  /** Where the vise stands, or each of several side by side; one line for each step. */
  List<String> where(CellPlan.Row row, Recommendation place) {
    CellPairing pairing = plan.pairing(row);
    TapeWords tape = new TapeWords(unit, pairing.outcome().machine(), pairing.outcome().vise());
    List<Place> places = plan.sideBySide(row);
    if (places.isEmpty()) {
      return tape.of(place);
    }
    SideBySide together = pairing.sideBySide();
    Orientation turn = together.handleTo().orElseThrow();
    List<String> lines = new ArrayList<>();
    lines.add("each handle to the " + turn.word() + ", " + together.mount());
    for (int i = 0; i < places.size(); i++) {
      lines.add(
          i
              + 1
              + ": "
              + String.join(", ", tape.edges(turn, places.get(i).x(), places.get(i).y(), 0)));
    }
    return lines;
  }

  /** Where one of several kinds stands, one line for each step; 0 the leftmost. */
  List<String> where(CellSet set, int at) {
    SetOutcome row = set.row();
    SetOutcome.Stand stand = row.stands().get(at);
    List<String> lines = new ArrayList<>();
    boolean alongX = row.machine().slots().direction() == Axis.X;
    lines.add(
        "no. "
            + (at + 1)
            + " of "
            + row.stands().size()
            + (alongX ? " from the left" : " from the front"));
    lines.addAll(
        new TapeWords(unit, row.machine(), stand.vise())
            .of(stand.place(), row.least().orElseThrow()));
    stand.nextGap().ifPresent(gap -> lines.add(unit.brief(gap, Rounding.DOWN) + " to the next"));
    return lines;
  }

  /** What must be minded of several kinds side by side. */
  List<String> minds(CellSet set) {
    return new SetWords(unit, plan.of().shop().settings()).minds(set.row());
  }

  /** What to know if several vises stand on the table; empty for one. */
  String several(CellPlan.Row row) {
    return row.given().orElseThrow().count() > 1
        ? "margin and limit of one alone; side by side each is clear where it stands"
        : "";
  }

  /** What the row of vises asks for and one alone does not; empty for one. */
  String besides(CellPlan.Row row) {
    return plan.besides(row).stream()
        .map(CaveatWords::ofRow)
        .map(words -> "side by side: " + words)
        .collect(Collectors.joining("; "));
  }

  /** {@code changed, was plain 125}; empty if there is no earlier plan. */
  String change(CellPlan.Row row) {
    return plan.isChanged(row)
        .map(
            changed ->
                changed
                    ? "changed, was " + before(row)
                    : row.given().isPresent() ? new StayWords(plan, unit).of(row) : "")
        .orElse("");
  }

  /** The same, but empty where nothing has to be done. */
  String toDo(CellPlan.Row row) {
    String change = change(row);
    return change.equals(StayWords.STAYS) ? "" : change;
  }

  private String before(CellPlan.Row row) {
    List<String> kinds = plan.wasThere(row);
    return kinds.isEmpty() ? "without any of these vises" : String.join(" + ", kinds);
  }

  /** What is bought for a machine; empty if nothing is. */
  String bought(CellPlan.Row row) {
    return bought(row.boughtMachine(), row.boughtVises().size());
  }

  static String bought(boolean machine, int vises) {
    List<String> words = new ArrayList<>();
    if (machine) {
      words.add("the machine");
    }
    if (vises > 0) {
      words.add(vises == 1 ? "a vise" : vises + " vises");
    }
    return String.join(" and ", words);
  }

  /** {@code 2 × plain 160}. */
  String thing(Purchase purchase) {
    String name =
        purchase.what() == Purchase.What.VISE
            ? plan.of().shop().vises().get(purchase.index()).name()
            : plan.of().shop().machines().get(purchase.index()).name();
    return purchase.count() + times + name;
  }

  /** What would hold a job that the plan does not hold. */
  String remedy(Unheld unheld) {
    return switch (unheld.remedy()) {
      case NOTHING_HOLDS ->
          plan.of().unknownOf(unheld.job()).isEmpty()
              ? "nothing in the tables holds it, bought or not"
              : "nothing in the tables is known to hold it, bought or not" + unknown(unheld.job());
      case BUY ->
          unheld.purchases().isEmpty()
              ? "what there is would hold it too; time ran out before the plan was found"
              : "would be held with "
                  + things(unheld.purchases())
                  + " bought for "
                  + ShopCell.money(unheld.cost())
                  + (unheld.proven()
                      ? "; nothing cheaper does it"
                      : "; something cheaper may do, time ran out");
      case NOTHING_ON_SALE ->
          unheld.proven()
              ? "something holds it, but not beside all that is held already, whatever is bought"
                  + unknown(unheld.job())
              : "something holds it; nothing was found to buy that does so beside all that is held"
                  + " already";
      case NOT_SOUGHT -> "what would hold it was not looked for: time ran out";
    };
  }

  private String unknown(int job) {
    Set<String> columns = plan.of().unknownOf(job);
    if (columns.isEmpty()) {
      return "";
    }
    String more =
        columns.size() > COLUMNS_NAMED ? " and " + (columns.size() - COLUMNS_NAMED) + " more" : "";
    return "; blank: "
        + columns.stream().limit(COLUMNS_NAMED).collect(Collectors.joining(", "))
        + more;
  }

  String things(List<Purchase> purchases) {
    return purchases.stream().map(this::thing).collect(Collectors.joining(" and "));
  }

  /** {@code 77 of 81 pieces, 3 of 4 jobs}. */
  String held() {
    Plan solution = plan.plan();
    return solution.held().size()
        + " of "
        + plan.of().shop().jobs().size()
        + " jobs, "
        + plan.heldPieces()
        + " of "
        + plan.pieces()
        + " pieces";
  }
}
