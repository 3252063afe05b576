package org.jawroom.plan.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.IntStream;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.Fit;
import org.jawroom.plan.model.Pick;

/**
 * A cell together with its wishes, prepared for optimization: the eligible fits, by machine and by
 * vise, and the exact value of any {@link Choice} for each {@link Aim}.
 */
public final class Task {

  /** Jobs held by the same fits, merged into one. */
  public record Group(List<Integer> fits, long quantity, List<Integer> jobs) {}

  private final CellModel cell;
  private final boolean buy;
  private final OptionalLong budget;
  private final Optional<Map<Integer, List<Integer>>> keep;
  private final List<Fit> fits;
  private final List<List<Integer>> ofMachine = new ArrayList<>();
  private final List<List<Integer>> ofVise = new ArrayList<>();
  private final List<Group> groups = new ArrayList<>();

  /** Candidate machines are eligible only if jobs exist that can justify their purchase. */
  public Task(
      CellModel cell,
      boolean buy,
      OptionalLong budget,
      Optional<Map<Integer, List<Integer>>> keep) {
    this.cell = cell;
    this.buy = buy;
    this.budget = budget;
    this.keep = keep;
    boolean candidates = buy && !cell.jobs().isEmpty();
    fits =
        cell.fits().stream()
            .filter(fit -> candidates || cell.machines().get(fit.machine()).isOwned())
            .filter(this::isToBeHad)
            .sorted(
                Comparator.comparingInt(Fit::machine).thenComparing(Fit::vises, Task::inTableOrder))
            .toList();
    cell.machines().forEach(machine -> ofMachine.add(new ArrayList<>()));
    cell.vises().forEach(vise -> ofVise.add(new ArrayList<>()));
    for (int fit = 0; fit < fits.size(); fit++) {
      ofMachine.get(fits.get(fit).machine()).add(fit);
      for (int vise = 0; vise < ofVise.size(); vise++) {
        if (uses(fit, vise) > 0) {
          ofVise.get(vise).add(fit);
        }
      }
    }
    group();
  }

  private boolean isToBeHad(Fit fit) {
    return fit.vises().stream()
        .map(cell::kind)
        .allMatch(kind -> uses(fit, kind) <= stock(kind) || sells(kind));
  }

  /** By their first vises, then by their second, and so on; fewer before more. */
  private static int inTableOrder(List<Integer> one, List<Integer> other) {
    return Arrays.compare(
        one.stream().mapToInt(vise -> vise).toArray(),
        other.stream().mapToInt(vise -> vise).toArray());
  }

  private void group() {
    Map<List<Integer>, List<Integer>> same = new LinkedHashMap<>();
    for (int job = 0; job < cell.jobs().size(); job++) {
      Set<Pick> heldBy = cell.jobs().get(job).heldBy();
      List<Integer> holding = new ArrayList<>();
      for (int fit = 0; fit < fits.size(); fit++) {
        if (heldBy.contains(fits.get(fit).pick())) {
          holding.add(fit);
        }
      }
      if (!holding.isEmpty()) {
        same.computeIfAbsent(holding, none -> new ArrayList<>()).add(job);
      }
    }
    same.forEach(
        (holding, jobs) ->
            groups.add(
                new Group(
                    holding,
                    jobs.stream().mapToLong(job -> cell.jobs().get(job).quantity()).sum(),
                    jobs)));
  }

  /** The aims in lexicographic order, without the final tie-break by table order. */
  public List<Aim> aims() {
    List<Aim> aims = new ArrayList<>();
    boolean jobs = !cell.jobs().isEmpty();
    aims.add(jobs ? Aim.HELD : Aim.EQUIPPED);
    if (buy) {
      aims.add(Aim.COST);
    }
    if (jobs) {
      aims.add(Aim.EQUIPPED);
    }
    aims.addAll(List.of(Aim.GOOD, Aim.OPENING, Aim.JAW));
    if (keep.isPresent()) {
      aims.add(Aim.CHANGES);
    }
    aims.add(Aim.SET_OUT);
    return aims;
  }

  /** Whether stock, market and budget allow the choice. */
  public boolean allows(Choice choice) {
    for (int vise = 0; vise < cell.vises().size(); vise++) {
      if (bought(choice, vise) > 0 && !sells(vise)) {
        return false;
      }
    }
    return budget.isEmpty() || cost(choice) <= budget.getAsLong();
  }

  /** The value of a choice, larger is better; money and changes count as negative numbers. */
  public long value(Aim aim, Choice choice) {
    return switch (aim) {
      case HELD -> groups.stream().filter(choice::holds).mapToLong(Group::quantity).sum();
      case COST -> -cost(choice);
      case THINGS -> -things(choice);
      case EQUIPPED -> choice.fits().size();
      case GOOD, OPENING, JAW ->
          choice.fits().stream().mapToLong(fit -> amount(aim, fits.get(fit))).sum();
      case CHANGES -> -changes(choice);
      case SET_OUT -> setOut(choice);
      case ORDER, REMEDY -> throw new IllegalArgumentException(aim + " has no value");
    };
  }

  /** An upper bound on the value over all choices, ignoring all other constraints. */
  public long ceiling(Aim aim) {
    return switch (aim) {
      case HELD -> groups.stream().mapToLong(Group::quantity).sum();
      case COST, THINGS, CHANGES -> 0;
      case EQUIPPED -> ofMachine.stream().filter(fitting -> !fitting.isEmpty()).count();
      case GOOD, OPENING, JAW ->
          ofMachine.stream()
              .mapToLong(
                  fitting ->
                      fitting.stream().mapToLong(fit -> amount(aim, fits.get(fit))).max().orElse(0))
              .sum();
      case SET_OUT -> Long.MAX_VALUE;
      case ORDER, REMEDY -> throw new IllegalArgumentException(aim + " has no value");
    };
  }

  /** What one fit adds to an aim that is a sum over the fits chosen. */
  public static long amount(Aim aim, Fit fit) {
    return switch (aim) {
      case GOOD -> fit.good() ? 1 : 0;
      case OPENING -> fit.opening();
      case JAW -> fit.jaw();
      default -> throw new IllegalArgumentException(aim + " is no sum over fits");
    };
  }

  private long cost(Choice choice) {
    return IntStream.range(0, items()).mapToLong(item -> bought(choice, item) * price(item)).sum();
  }

  /** The unit price of an item; 0 if it is not for sale. */
  public long price(int item) {
    int vises = cell.vises().size();
    return (item < vises
            ? cell.vises().get(item).price()
            : cell.machines().get(item - vises).price())
        .orElse(0);
  }

  private long things(Choice choice) {
    return IntStream.range(0, items()).mapToLong(item -> bought(choice, item)).sum();
  }

  private long changes(Choice choice) {
    long changes = 0;
    for (int machine = 0; machine < cell.machines().size(); machine++) {
      changes += changes(machine, choice.fitOf(machine));
    }
    return changes;
  }

  /**
   * How many changes a fit, or {@link Choice#BARE}, is on a machine: a vise put on, one taken off,
   * or one exchanged for another is one change.
   */
  public int changes(int machine, int fit) {
    List<Integer> before = keep().getOrDefault(machine, List.of());
    List<Integer> after = fit == Choice.BARE ? List.of() : fits.get(fit).vises();
    int stay = (int) before.stream().filter(after::contains).count();
    return Math.max(before.size(), after.size()) - stay;
  }

  private long setOut(Choice choice) {
    long[] stand = new long[cell.vises().size()];
    for (int fit : choice.fits()) {
      for (int vise = 0; vise < stand.length; vise++) {
        stand[vise] += mostOut(fit, vise);
      }
    }
    long total = 0;
    for (int vise = 0; vise < stand.length; vise++) {
      total += Math.min(stand[vise], stock(vise) + bought(choice, vise));
    }
    return total;
  }

  /** The number of items: the kinds of vise, then the machines, whether for sale or not. */
  public int items() {
    return cell.vises().size() + cell.machines().size();
  }

  /** How many units of an item a choice needs beyond the stock. */
  public int bought(Choice choice, int item) {
    int vises = cell.vises().size();
    return item < vises ? boughtVises(choice, item) : boughtMachine(choice, item - vises);
  }

  private int boughtMachine(Choice choice, int machine) {
    return choice.fitOf(machine) == Choice.BARE || cell.machines().get(machine).isOwned() ? 0 : 1;
  }

  private int boughtVises(Choice choice, int vise) {
    int used = 0;
    for (int fit : choice.fits()) {
      used += uses(fit, vise);
    }
    return Math.max(0, used - stock(vise));
  }

  /** How many vises of a kind, in whatever form, a fit needs at least. */
  public int uses(int fit, int kind) {
    return uses(fits.get(fit), kind);
  }

  private int uses(Fit fit, int kind) {
    return (int) fit.vises().stream().filter(vise -> cell.kind(vise) == kind).count();
  }

  /** How many vises of a kind stand on the table at most. */
  public int mostOut(int fit, int kind) {
    return uses(fit, kind) * fits.get(fit).most();
  }

  /** How many vises of a kind all machines together need at most, if they have some of these. */
  public int mostUsed(int kind, List<Integer> among) {
    int[] most = new int[cell.machines().size()];
    for (int fit : among) {
      int machine = fits.get(fit).machine();
      most[machine] = Math.max(most[machine], uses(fit, kind));
    }
    return Arrays.stream(most).sum();
  }

  public int stock(int vise) {
    return cell.vises().get(vise).stock();
  }

  public boolean sells(int vise) {
    return buy && cell.vises().get(vise).price().isPresent();
  }

  public CellModel cell() {
    return cell;
  }

  public OptionalLong budget() {
    return budget;
  }

  public Map<Integer, List<Integer>> keep() {
    return keep.orElseThrow();
  }

  public List<Fit> fits() {
    return fits;
  }

  public List<Integer> ofMachine(int machine) {
    return ofMachine.get(machine);
  }

  public List<Integer> ofVise(int vise) {
    return ofVise.get(vise);
  }

  public List<Group> groups() {
    return groups;
  }
}
