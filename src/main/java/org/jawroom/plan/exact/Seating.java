package org.jawroom.plan.exact;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;

/**
 * Rows seated in columns with the greatest total worth, each row in one column, no column beyond
 * its capacity. Immutable.
 *
 * <p>The Hungarian method in whole numbers. Every row and column has a price, such that no seat is
 * worth more than the prices of its row and its column together, and every seat taken is worth
 * exactly that; so the total cannot be greater. Capacity left over is taken by one more row,
 * <i>nobody</i>, whose seats are worth nothing. When the worths of a row change, it alone leaves
 * its seat, and a shortest path of exchanges seats it again.
 */
final class Seating {

  private final int[] capacity;
  private final BigInteger[][] worths;
  private final int[] columnOf;
  private final BigInteger[] rowPrice;
  private final BigInteger[] columnPrice;

  private Seating(
      int[] capacity,
      BigInteger[][] worths,
      int[] columnOf,
      BigInteger[] rowPrice,
      BigInteger[] columnPrice) {
    this.capacity = capacity;
    this.worths = worths;
    this.columnOf = columnOf;
    this.rowPrice = rowPrice;
    this.columnPrice = columnPrice;
  }

  /**
   * Each row in the column of its own index, which has room for it, at a worth of 0, and allowed
   * nowhere else; to be given its worths one row after the other.
   *
   * @param capacity of each column
   */
  static Seating empty(int rows, int[] capacity) {
    BigInteger[][] worths = new BigInteger[rows][capacity.length];
    int[] columnOf = new int[rows];
    for (int row = 0; row < rows; row++) {
      worths[row][row] = BigInteger.ZERO;
      columnOf[row] = row;
    }
    BigInteger[] rowPrice = new BigInteger[rows + 1];
    BigInteger[] columnPrice = new BigInteger[capacity.length];
    Arrays.fill(rowPrice, BigInteger.ZERO);
    Arrays.fill(columnPrice, BigInteger.ZERO);
    return new Seating(capacity, worths, columnOf, rowPrice, columnPrice);
  }

  /**
   * The same with other worths of a row; empty if there is no seating then.
   *
   * @param changed the worth of the row in each column; null: not allowed
   */
  Optional<Seating> with(int row, BigInteger[] changed) {
    Seating next =
        new Seating(
            capacity, worths.clone(), columnOf.clone(), rowPrice.clone(), columnPrice.clone());
    next.worths[row] = changed;
    return next.seat(row) ? Optional.of(next) : Optional.empty();
  }

  int columnOf(int row) {
    return columnOf[row];
  }

  /** The sum of the worths of all seats taken: the greatest there is. */
  BigInteger total() {
    BigInteger total = BigInteger.ZERO;
    for (int row = 0; row < columnOf.length; row++) {
      total = total.add(worths[row][columnOf[row]]);
    }
    return total;
  }

  /**
   * A lower bound on how much the total loses if a row must take a seat of this worth in a column.
   */
  BigInteger loss(int row, int column, BigInteger worth) {
    return rowPrice[row].add(columnPrice[column]).subtract(worth);
  }

  private boolean seat(int row) {
    BigInteger price = null;
    for (int column = 0; column < capacity.length; column++) {
      if (worths[row][column] != null) {
        BigInteger least = worths[row][column].subtract(columnPrice[column]);
        price = price == null ? least : price.max(least);
      }
    }
    if (price == null) {
      return false;
    }
    rowPrice[row] = price;
    int left = columnOf[row];
    boolean stays = worths[row][left] != null && loss(row, left, worths[row][left]).signum() == 0;
    return stays || new Exchange(row, left).find();
  }

  /**
   * A shortest path of exchanges (Dijkstra) from a row without a seat to the column that has one
   * too many. Its length is what the exchanges lose against the prices.
   */
  private final class Exchange {
    private final int nobody = columnOf.length;
    private final int seeker;
    private final int free;
    private final BigInteger[] distance = new BigInteger[capacity.length];
    private final int[] from = new int[capacity.length];
    private final boolean[] done = new boolean[capacity.length];
    private final int[] leaves = new int[nobody + 1];
    private static final int NOWHERE = -1;

    Exchange(int seeker, int free) {
      this.seeker = seeker;
      this.free = free;
      Arrays.fill(leaves, NOWHERE);
      columnOf[seeker] = NOWHERE;
    }

    boolean find() {
      relax(seeker, BigInteger.ZERO);
      for (int column = nearest(); column != free; column = nearest()) {
        if (column == NOWHERE) {
          return false;
        }
        done[column] = true;
        displace(column);
      }
      reprice();
      move();
      return true;
    }

    private int nearest() {
      int nearest = NOWHERE;
      for (int column = 0; column < distance.length; column++) {
        if (!done[column]
            && distance[column] != null
            && (nearest == NOWHERE || distance[column].compareTo(distance[nearest]) < 0)) {
          nearest = column;
        }
      }
      return nearest;
    }

    /** Whoever sits in a column may go on to another. */
    private void displace(int column) {
      int there = 0;
      for (int row = 0; row < nobody; row++) {
        if (columnOf[row] == column) {
          there++;
          leaves[row] = column;
          relax(row, distance[column]);
        }
      }
      if (there < capacity[column] && leaves[nobody] == NOWHERE) {
        leaves[nobody] = column;
        relax(nobody, distance[column]);
      }
    }

    private void relax(int row, BigInteger start) {
      for (int column = 0; column < distance.length; column++) {
        BigInteger worth = row == nobody ? BigInteger.ZERO : worths[row][column];
        if (!done[column] && worth != null) {
          BigInteger length = start.add(loss(row, column, worth));
          if (distance[column] == null || length.compareTo(distance[column]) < 0) {
            distance[column] = length;
            from[column] = row;
          }
        }
      }
    }

    private void reprice() {
      BigInteger whole = distance[free];
      rowPrice[seeker] = rowPrice[seeker].subtract(whole);
      for (int row = 0; row <= nobody; row++) {
        if (leaves[row] != NOWHERE) {
          rowPrice[row] = rowPrice[row].subtract(whole.subtract(distance[leaves[row]]));
        }
      }
      for (int column = 0; column < distance.length; column++) {
        if (done[column]) {
          columnPrice[column] = columnPrice[column].add(whole.subtract(distance[column]));
        }
      }
    }

    private void move() {
      int column = free;
      for (int row = from[column]; row != seeker; row = from[column]) {
        if (row != nobody) {
          columnOf[row] = column;
        }
        column = leaves[row];
      }
      columnOf[seeker] = column;
    }
  }
}
