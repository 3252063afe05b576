package org.jawroom.plan.exact;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Task;

/**
 * The best seating of some fits, whatever jobs it holds: its worth is an upper bound on that of
 * every choice of these fits. Immutable.
 */
final class Relaxation {

  private final Task task;
  private final Worths worths;
  private final Seats seats;
  private final BitSet allowed;
  private final BitSet bare;
  private final Seats.Row[] rows;
  private Seating seating;
  private BigInteger worth;

  private Relaxation(
      Task task,
      Worths worths,
      Seats seats,
      BitSet allowed,
      BitSet bare,
      Seats.Row[] rows,
      Seating seating) {
    this.task = task;
    this.worths = worths;
    this.seats = seats;
    this.allowed = allowed;
    this.bare = bare;
    this.rows = rows;
    this.seating = seating;
    this.worth = seating.total().add(worths.constant());
  }

  /** With all fits of the task. */
  static Relaxation of(Task task, Worths worths) {
    int machines = task.cell().machines().size();
    Seats seats = new Seats(task, worths);
    Relaxation all =
        new Relaxation(
            task,
            worths,
            seats,
            allOf(task.fits().size()),
            allOf(machines),
            new Seats.Row[machines],
            seats.empty());
    for (int machine = 0; machine < machines; machine++) {
      if (!all.seat(machine)) {
        throw new IllegalStateException("a machine can be bare");
      }
    }
    return all;
  }

  private static BitSet allOf(int size) {
    BitSet all = new BitSet(size);
    all.set(0, size);
    return all;
  }

  private boolean seat(int machine) {
    rows[machine] = seats.row(machine, allowed, bare.get(machine));
    Optional<Seating> next = seating.with(machine, rows[machine].worths());
    next.ifPresent(
        found -> {
          seating = found;
          worth = found.total().add(worths.constant());
        });
    return next.isPresent();
  }

  BigInteger worth() {
    return worth;
  }

  Choice choice() {
    List<Integer> taken = new ArrayList<>();
    for (int machine = 0; machine < rows.length; machine++) {
      int fit = rows[machine].fits()[seating.columnOf(machine)];
      if (fit != Choice.BARE) {
        taken.add(fit);
      }
    }
    return Choice.of(task, taken).orElseThrow();
  }

  /** An upper bound on the worth of every choice that has the fit. */
  BigInteger worthWith(int fit) {
    return worth.subtract(seats.loss(seating, fit));
  }

  /** The fits allowed with which a choice may have a worth that is {@code wanted}. */
  BitSet promising(Predicate<BigInteger> wanted) {
    BitSet promising = new BitSet();
    allowed.stream().filter(fit -> wanted.test(worthWith(fit))).forEach(promising::set);
    return promising;
  }

  /** Its choices that have the fit. */
  Optional<Relaxation> with(int fit) {
    int machine = task.fits().get(fit).machine();
    Relaxation next = copy();
    task.ofMachine(machine).forEach(next.allowed::clear);
    next.allowed.set(fit);
    next.bare.clear(machine);
    return next.seat(machine) ? Optional.of(next) : Optional.empty();
  }

  /** Its choices that have none of the fits. */
  Optional<Relaxation> without(BitSet fits) {
    Relaxation next = copy();
    BitSet gone = (BitSet) fits.clone();
    gone.and(allowed);
    next.allowed.andNot(gone);
    for (int machine = 0; machine < rows.length; machine++) {
      boolean changes = task.ofMachine(machine).stream().anyMatch(gone::get);
      if (changes && !next.seat(machine)) {
        return Optional.empty();
      }
    }
    return Optional.of(next);
  }

  private Relaxation copy() {
    return new Relaxation(
        task,
        worths,
        seats,
        (BitSet) allowed.clone(),
        (BitSet) bare.clone(),
        rows.clone(),
        seating);
  }
}
