package org.jawroom.report.compare;

import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.rows.PairingRow;
import org.jawroom.report.rows.UnreadablePairings;

/**
 * The pairings of one of the two compared runs, in any number and order. Memory grows with the
 * names of machines and vises, not with pairings.
 */
public final class ComparedSide {
  private final SortedRecords records;
  private final Set<String> machines = new LinkedHashSet<>();
  private final Set<String> vises = new LinkedHashSet<>();
  private Optional<Twins> twins = Optional.empty();

  /** Two rows of one pairing; of the first only the row number. */
  private record Twins(long first, Row second) {}

  /** A row to be compared. */
  static final class Row {
    private final byte[] key;
    private final long number;
    private final PairingRow pairing;

    private Row(byte[] key, long number, PairingRow pairing) {
      this.key = key;
      this.number = number;
      this.pairing = pairing;
    }

    /**
     * Compares by pairing: negative if it sorts before {@code other}, 0 if both are the same
     * pairing.
     */
    int compareKey(Row other) {
      return Arrays.compareUnsigned(key, other.key);
    }

    /** The row number in its file. */
    long number() {
      return number;
    }

    PairingRow pairing() {
      return pairing;
    }
  }

  /** Rows sorted by key, without duplicate keys. */
  interface Rows {

    /** The next row, or empty after the last. */
    Optional<Row> next() throws IOException;
  }

  public ComparedSide() {
    this(SortedRecords.HELD);
  }

  /** Holds up to that many bytes in memory. */
  ComparedSide(int held) {
    records = new SortedRecords(held);
  }

  /**
   * Adds a row.
   *
   * @param number its row number in the file, ascending
   */
  public void add(PairingRow pairing, long number) throws IOException {
    machines.add(pairing.machine());
    vises.add(pairing.vise());
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.write(PairingRecord.key(pairing));
    out.writeLong(number);
    PairingRecord.write(pairing, out);
    records.add(bytes.toByteArray());
  }

  /** In the order of the file, as {@link #vises}. */
  Set<String> machines() {
    return machines;
  }

  Set<String> vises() {
    return vises;
  }

  /** All rows; may be called once. */
  Rows rows() throws IOException {
    SortedRecords.Cursor sorted = records.sorted();
    Row[] ahead = {row(sorted.next())};
    return () -> {
      Row first = ahead[0];
      if (first == null) {
        return Optional.empty();
      }
      Row next = row(sorted.next());
      for (; next != null && next.compareKey(first) == 0; next = row(sorted.next())) {
        note(first, next);
      }
      ahead[0] = next;
      return Optional.of(first);
    };
  }

  /**
   * Reports a duplicate; call it when all rows have been read.
   *
   * @throws UnreadablePairings if a pairing occurred twice
   */
  public void refuseTwins() throws UnreadablePairings {
    if (twins.isPresent()) {
      PairingRow pairing = twins.get().second.pairing;
      throw new UnreadablePairings(
          "row "
              + twins.get().second.number
              + " has the same pairing as row "
              + twins.get().first
              + ", "
              + PlainText.forTerminal(pairing.machine() + " x " + pairing.vise()));
    }
  }

  /**
   * Keeps the duplicate that comes first in the file; the sort order finds them in another order.
   */
  private void note(Row first, Row second) {
    if (twins.isEmpty() || second.number < twins.get().second.number) {
      twins = Optional.of(new Twins(first.number, second));
    }
  }

  /** Null after the last. */
  private static Row row(Optional<byte[]> bytes) throws IOException {
    if (bytes.isEmpty()) {
      return null;
    }
    DataInputStream in = PairingRecord.in(bytes.get());
    int left = bytes.get().length;
    in.skipNBytes(in.readInt());
    in.skipNBytes(in.readInt());
    byte[] key = Arrays.copyOf(bytes.get(), left - in.available());
    long number = in.readLong();
    return new Row(key, number, PairingRecord.read(in));
  }
}
