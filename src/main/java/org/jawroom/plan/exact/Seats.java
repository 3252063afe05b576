package org.jawroom.plan.exact;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.BitSet;
import org.jawroom.plan.choice.Choice;
import org.jawroom.plan.choice.Task;

/**
 * Machines as rows, and what they may take as columns: first one column per machine, for itself
 * alone, in which it is bare or has what never runs out or is bought; then one per kind of which
 * the stock may not suffice, with the stock as its capacity.
 *
 * <p>Of several kinds on a table one alone is counted, the first that may run out. So every choice
 * is a seating, of no lower worth.
 */
final class Seats {

  private static final int NONE = -1;

  /**
   * What a machine may take.
   *
   * @param worths of each column, null where it may take nothing
   * @param fits the fit that has that worth, or {@link Choice#BARE}
   */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  record Row(BigInteger[] worths, int[] fits) {}

  private final Task task;
  private final Worths worths;
  private final int[] columnOf;
  private final int[] capacity;
  private final BigInteger[] alone;
  private final BigInteger[] fromStock;

  Seats(Task task, Worths worths) {
    this.task = task;
    this.worths = worths;
    int machines = task.cell().machines().size();
    int kinds = task.cell().vises().size();
    columnOf = new int[kinds];
    int columns = machines;
    for (int kind = 0; kind < kinds; kind++) {
      boolean scarce = task.stock(kind) < task.mostUsed(kind, task.ofVise(kind));
      columnOf[kind] = scarce ? columns++ : NONE;
    }
    capacity = new int[columns];
    Arrays.fill(capacity, 0, machines, 1);
    for (int kind = 0; kind < kinds; kind++) {
      if (columnOf[kind] != NONE) {
        capacity[columnOf[kind]] = task.stock(kind);
      }
    }
    alone = new BigInteger[task.fits().size()];
    fromStock = new BigInteger[task.fits().size()];
    for (int fit = 0; fit < alone.length; fit++) {
      BigInteger worth = worths.of(fit);
      int kind = counted(fit);
      if (kind == NONE) {
        alone[fit] = worth;
      } else {
        fromStock[fit] = worth;
        alone[fit] = task.sells(kind) ? worth.add(worths.ofPurchase(kind)) : null;
      }
    }
  }

  private int counted(int fit) {
    return task.fits().get(fit).vises().stream()
        .map(task.cell()::kind)
        .filter(kind -> columnOf[kind] != NONE)
        .findFirst()
        .orElse(NONE);
  }

  /** The seating without a fit, all machines bare. */
  Seating empty() {
    return Seating.empty(task.cell().machines().size(), capacity);
  }

  /** What a machine may take of the fits {@code allowed}. */
  Row row(int machine, BitSet allowed, boolean bare) {
    Row row = new Row(new BigInteger[capacity.length], new int[capacity.length]);
    if (bare) {
      offer(row, machine, worths.ofBare(machine), Choice.BARE);
    }
    for (int fit : task.ofMachine(machine)) {
      if (allowed.get(fit)) {
        offer(row, machine, alone[fit], fit);
        if (fromStock[fit] != null) {
          offer(row, columnOf[counted(fit)], fromStock[fit], fit);
        }
      }
    }
    return row;
  }

  private static void offer(Row row, int column, BigInteger worth, int fit) {
    BigInteger so = row.worths()[column];
    if (worth != null && (so == null || worth.compareTo(so) > 0)) {
      row.worths()[column] = worth;
      row.fits()[column] = fit;
    }
  }

  /** A lower bound on what a seating loses if it must take a fit. */
  BigInteger loss(Seating seating, int fit) {
    int machine = task.fits().get(fit).machine();
    BigInteger loss = alone[fit] == null ? null : seating.loss(machine, machine, alone[fit]);
    if (fromStock[fit] == null) {
      return loss;
    }
    BigInteger other = seating.loss(machine, columnOf[counted(fit)], fromStock[fit]);
    return loss == null ? other : loss.min(other);
  }
}
