package org.jawroom.report.compare;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jawroom.report.rows.PairingRow;

/**
 * Compares two runs pairing by pairing; pairings are the same if machine and vise have the same
 * names. Computes only differences; {@link ComparedPair} defines which is better. Both sides are
 * sorted externally by pairing and merge-joined; the changes are sorted once more for the report.
 * Memory does not grow with the number of pairings.
 */
public final class Comparison {
  private final ComparedSide old;
  private final ComparedSide now;
  private final SortedRecords changes;
  private final Map<Change, Long> counts = new EnumMap<>(Change.class);

  private Comparison(ComparedSide old, ComparedSide now, int held) {
    this.old = old;
    this.now = now;
    this.changes = new SortedRecords(held);
  }

  /** Receives the changes. */
  interface Reader {
    void pair(Change change, ComparedPair pair) throws IOException;

    void only(Change side, PairingRow pairing) throws IOException;
  }

  /**
   * Compares all rows of both runs.
   *
   * @throws IOException if a temporary file could not be written
   */
  public static Comparison of(ComparedSide old, ComparedSide now) throws IOException {
    return of(old, now, SortedRecords.HELD);
  }

  /** Holds up to that many bytes in memory. */
  static Comparison of(ComparedSide old, ComparedSide now, int held) throws IOException {
    Comparison comparison = new Comparison(old, now, held);
    comparison.merge();
    return comparison;
  }

  private void merge() throws IOException {
    ComparedSide.Rows before = old.rows();
    ComparedSide.Rows after = now.rows();
    Optional<ComparedSide.Row> left = before.next();
    Optional<ComparedSide.Row> right = after.next();
    while (left.isPresent() || right.isPresent()) {
      int order = left.isEmpty() ? 1 : right.isEmpty() ? -1 : left.get().compareKey(right.get());
      if (order < 0) {
        only(Change.ONLY_OLD, left.get());
      } else if (order > 0) {
        only(Change.ONLY_NEW, right.get());
      } else {
        pair(new ComparedPair(left.get().pairing(), right.get().pairing()), right.get().number());
      }
      left = order <= 0 ? before.next() : left;
      right = order >= 0 ? after.next() : right;
    }
  }

  private void only(Change side, ComparedSide.Row row) throws IOException {
    add(side, new long[0], row.number(), row.pairing());
  }

  private void pair(ComparedPair pair, long number) throws IOException {
    Change change = pair.change();
    if (change == Change.UNCHANGED) {
      counts.merge(change, 1L, Long::sum);
      return;
    }
    long[] gains = change == Change.WORSE || change == Change.BETTER ? pair.gains() : new long[0];
    // The bitwise complement reverses the order.
    long[] order =
        change == Change.BETTER ? Arrays.stream(gains).map(gain -> ~gain).toArray() : gains;
    add(change, order, number, pair.old(), pair.now());
  }

  private void add(Change change, long[] order, long number, PairingRow... pairings)
      throws IOException {
    counts.merge(change, 1L, Long::sum);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeByte(change.ordinal());
    out.writeByte(order.length);
    for (long one : order) {
      // Flips the sign bit, so that unsigned byte order equals signed order.
      out.writeLong(one ^ Long.MIN_VALUE);
    }
    out.writeLong(number);
    for (PairingRow pairing : pairings) {
      PairingRecord.write(pairing, out);
    }
    changes.add(bytes.toByteArray());
  }

  /** The number of pairings with that change. */
  long count(Change change) {
    return counts.getOrDefault(change, 0L);
  }

  /**
   * Passes the changes to {@code reader}, once: in the order of {@link Change}; the worse and the
   * better by the size of loss or gain, largest first; ties and other changes in the order of the
   * new run, or of the only run that has them.
   */
  void read(Reader reader) throws IOException {
    SortedRecords.Cursor sorted = changes.sorted();
    for (Optional<byte[]> one = sorted.next(); one.isPresent(); one = sorted.next()) {
      DataInputStream in = PairingRecord.in(one.get());
      Change change = Change.values()[in.readByte()];
      in.skipNBytes((long) Long.BYTES * in.readByte());
      in.skipNBytes(Long.BYTES);
      PairingRow first = PairingRecord.read(in);
      if (change == Change.ONLY_OLD || change == Change.ONLY_NEW) {
        reader.only(change, first);
      } else {
        reader.pair(change, new ComparedPair(first, PairingRecord.read(in)));
      }
    }
  }

  /** The machines that are in no pairing of the other run. */
  List<String> machinesOnly(Change side) {
    return side == Change.ONLY_OLD
        ? only(old.machines(), now.machines())
        : only(now.machines(), old.machines());
  }

  /** The vises that are in no pairing of the other run. */
  List<String> visesOnly(Change side) {
    return side == Change.ONLY_OLD
        ? only(old.vises(), now.vises())
        : only(now.vises(), old.vises());
  }

  private static List<String> only(Set<String> names, Set<String> others) {
    return names.stream().filter(name -> !others.contains(name)).toList();
  }
}
