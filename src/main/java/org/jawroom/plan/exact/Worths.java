package org.jawroom.plan.exact;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Task;
import org.jawroom.plan.model.Aim;
import org.jawroom.plan.model.Fit;

/**
 * Aims in lexicographic order, and the order of the tables after them, as one whole number: each
 * aim has binary digits of its own, wide enough for every sum. So the greater number is the better
 * choice.
 */
final class Worths {

  /** One for the sign, one so that all that follows stays below half a unit. */
  private static final int SPARE = 2;

  private final Task task;
  private final List<Aim> aims;
  private final int[] shift;
  private final BigInteger[] rank;
  private final long[] limit;
  private final Set<Integer> full;

  Worths(Task task, List<Aim> aims) {
    this.task = task;
    this.aims = List.copyOf(aims);
    full = Set.of();
    shift = new int[aims.size()];
    rank = new BigInteger[task.fits().size()];
    limit = new long[task.cell().vises().size()];
    Arrays.setAll(limit, this::limit);
    int low = order().bitLength() + SPARE;
    for (int place = aims.size() - 1; place >= 0; place--) {
      shift[place] = low;
      low += BigInteger.valueOf(most(aims.get(place))).bitLength() + SPARE;
    }
  }

  private Worths(Worths other, Set<Integer> full) {
    task = other.task;
    aims = other.aims;
    this.full = Set.copyOf(full);
    shift = other.shift;
    rank = other.rank;
    limit = other.limit;
  }

  /**
   * The same scale, but all vises of some kinds count as set out whatever the machines have, none
   * of them for sale. A choice is worth the same, a relaxed one less or more.
   */
  Worths withAllOut(Set<Integer> kinds) {
    return new Worths(this, kinds);
  }

  /**
   * Fills in the rank of each fit, a digit per machine, the first machine's the highest, greater
   * for an earlier fit; a bare machine has 0. Returns the number of all ranks.
   */
  private BigInteger order() {
    BigInteger unit = BigInteger.ONE;
    for (int machine = task.cell().machines().size() - 1; machine >= 0; machine--) {
      List<Integer> fits = task.ofMachine(machine);
      for (int place = 0; place < fits.size(); place++) {
        rank[fits.get(place)] = unit.multiply(BigInteger.valueOf(fits.size() - place));
      }
      unit = unit.multiply(BigInteger.valueOf(fits.size() + 1));
    }
    return unit;
  }

  /** An upper bound on the absolute value of an aim over all choices, relaxed or not. */
  private long most(Aim aim) {
    long sum = aim == Aim.SET_OUT ? Arrays.stream(limit).sum() : 0;
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      long most = Math.abs(bare(aim, machine));
      for (int fit : task.ofMachine(machine)) {
        long paid =
            aim == Aim.COST
                ? task.fits().get(fit).vises().stream()
                    .mapToLong(vise -> task.price(task.cell().kind(vise)))
                    .sum()
                : 0;
        most = Math.max(most, Math.abs(amount(aim, fit)) + paid);
      }
      sum = Math.addExact(sum, most);
    }
    return sum;
  }

  /** An upper bound on the number of a kind set out. */
  private long limit(int kind) {
    return task.sells(kind)
        ? Math.max(task.stock(kind), task.mostUsed(kind, task.ofVise(kind)))
        : task.stock(kind);
  }

  /** What counts without any fit. */
  BigInteger constant() {
    int place = aims.indexOf(Aim.SET_OUT);
    return place < 0 ? BigInteger.ZERO : digits(place, full.stream().mapToLong(task::stock).sum());
  }

  /** What a fit adds, its vises in stock; at most, where that depends on other machines. */
  BigInteger of(int fit) {
    BigInteger worth = rank[fit];
    for (int place = 0; place < shift.length; place++) {
      worth = worth.add(digits(place, amount(aims.get(place), fit)));
    }
    return worth;
  }

  /** What a bare machine adds. */
  BigInteger ofBare(int machine) {
    BigInteger worth = BigInteger.ZERO;
    for (int place = 0; place < shift.length; place++) {
      worth = worth.add(digits(place, bare(aims.get(place), machine)));
    }
    return worth;
  }

  /** What the purchase of a vise adds, 0 or less. */
  BigInteger ofPurchase(int kind) {
    int place = aims.indexOf(Aim.COST);
    return place < 0 ? BigInteger.ZERO : digits(place, -task.price(kind));
  }

  BigInteger of(Choice choice) {
    BigInteger worth = BigInteger.ZERO;
    for (int place = 0; place < shift.length; place++) {
      worth = worth.add(digits(place, task.value(aims.get(place), choice)));
    }
    for (int machine = 0; machine < task.cell().machines().size(); machine++) {
      int fit = choice.fitOf(machine);
      worth = fit == Choice.BARE ? worth : worth.add(rank[fit]);
    }
    return worth;
  }

  /**
   * The value of each aim. If no choice has a greater worth, none has a greater value of the first
   * aim; none that equals it there has a greater value of the second; and so on.
   */
  long[] values(BigInteger worth) {
    long[] values = new long[shift.length];
    BigInteger rest = worth;
    for (int place = 0; place < shift.length; place++) {
      BigInteger half = BigInteger.ONE.shiftLeft(shift[place] - 1);
      BigInteger value = rest.add(half).shiftRight(shift[place]);
      values[place] = value.longValueExact();
      rest = rest.subtract(value.shiftLeft(shift[place]));
    }
    return values;
  }

  /**
   * The kinds, none of them for sale, of which more would stand on the machines than there are. To
   * count all of them as set out may bring the worth of a relaxed choice down to its own.
   */
  Set<Integer> beyondStock(Choice choice) {
    Set<Integer> beyond = new HashSet<>();
    for (int kind = 0; aims.contains(Aim.SET_OUT) && kind < limit.length; kind++) {
      long room = 0;
      for (int machine = 0; machine < task.cell().machines().size(); machine++) {
        int fit = choice.fitOf(machine);
        room += fit == Choice.BARE ? 0 : Math.min(task.mostOut(fit, kind), limit[kind]);
      }
      if (room > task.stock(kind) && !task.sells(kind)) {
        beyond.add(kind);
      }
    }
    return beyond;
  }

  private BigInteger digits(int place, long value) {
    return BigInteger.valueOf(value).shiftLeft(shift[place]);
  }

  private long bare(Aim aim, int machine) {
    return aim == Aim.CHANGES ? -task.changes(machine, Choice.BARE) : 0;
  }

  private long amount(Aim aim, int fit) {
    Fit pairing = task.fits().get(fit);
    int machine = pairing.machine();
    return switch (aim) {
      case COST -> -task.price(task.cell().vises().size() + machine);
      case EQUIPPED -> 1;
      case GOOD, OPENING, JAW -> Task.amount(aim, pairing);
      case CHANGES -> -task.changes(machine, fit);
      case SET_OUT ->
          IntStream.range(0, limit.length)
              .filter(vise -> !full.contains(vise))
              .mapToLong(vise -> Math.min(task.mostOut(fit, vise), limit[vise]))
              .sum();
      default -> throw new IllegalArgumentException(aim + " is no sum over fits");
    };
  }
}
