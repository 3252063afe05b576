package org.jawroom.clearance.obstacle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.ClearanceClass;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.OpeningInterval;

/**
 * The swept parts of a vise over one opening range, in the vise frame, laid out in flat arrays for
 * fast evaluation in any turn, at any position, on any machine.
 *
 * <p>Parts are grouped by {@link ClearanceClass}, because the required clearance depends on nothing
 * else of a part.
 */
public final class SweptParts {

  /** Longs per part in {@link #rows}: six limits, the tolerance, the index in the list. */
  static final int ROW = 8;

  static final int U_LO = 0;
  static final int U_HI = 1;
  static final int V_LO = 2;
  static final int V_HI = 3;
  static final int W_LO = 4;
  static final int W_HI = 5;
  static final int TOLERANCE = 6;
  static final int INDEX = 7;

  /** An array: going through a list costs several times as much in the innermost loops. */
  static final ClearanceClass[] CLASSES = ClearanceClass.values();

  private static final Comparator<Part> PRECEDENCE =
      Comparator.comparingInt(Part::rank).thenComparing(Part::situation);

  /** Those that are empty over the openings, too. */
  private final List<Part> all;

  private final List<Part> parts;
  private final Interval openings;
  private final long[][] rows;
  private final PartReach reach;
  private final boolean tolerant;
  private final boolean[] meetsTable;
  private final boolean[] someMeetTable;
  private final int onlyLoading;
  private final boolean everEmpty;

  /** See {@link #core}; computed on first use, by any thread, always with the same result. */
  private SweptParts core;

  private SweptParts(List<Part> all, Interval openings, boolean tolerant, boolean core) {
    this.all = all;
    this.parts = withoutEmpty(all, openings);
    this.openings = openings;
    this.tolerant = tolerant;
    this.rows = new long[CLASSES.length][];
    this.meetsTable = new boolean[this.parts.size()];
    this.someMeetTable = new boolean[rows.length];
    for (int i = 0; i < meetsTable.length; i++) {
      meetsTable[i] = Pair.meetsTable(this.parts.get(i));
      someMeetTable[ClearanceClass.of(this.parts.get(i)).ordinal()] |= meetsTable[i];
    }
    this.onlyLoading = fill(core);
    this.reach = new PartReach(rows, tolerant);
    this.everEmpty = isAny(all, SweptParts::isEverEmpty);
  }

  /** See {@link #withWork}; no part of {@code bare} is empty over any openings. */
  private SweptParts(SweptParts bare, List<Part> work, Interval openings) {
    int from = bare.startOf(work.get(0));
    int until = from + work.size();
    int behind = bare.all.size() - from;
    Part[] both = bare.all.toArray(new Part[until + behind]);
    System.arraycopy(both, from, both, until, behind);
    this.meetsTable = Arrays.copyOf(bare.meetsTable, both.length);
    System.arraycopy(bare.meetsTable, from, meetsTable, until, behind);
    this.someMeetTable = bare.someMeetTable.clone();
    for (int i = from; i < until; i++) {
      both[i] = work.get(i - from);
      meetsTable[i] = Pair.meetsTable(both[i]);
      someMeetTable[ClearanceClass.of(both[i]).ordinal()] |= meetsTable[i];
    }
    this.all = List.of(both);
    this.parts = all;
    this.openings = openings;
    this.tolerant = bare.tolerant || work.get(0).tolerance() != 0;
    this.everEmpty = false;
    this.onlyLoading = bare.onlyLoading;
    this.rows = new long[CLASSES.length][];
    for (int kind = 0; kind < rows.length; kind++) {
      rows[kind] = bare.rowsWith(kind, from, work, openings);
    }
    this.reach = new PartReach(rows, tolerant);
  }

  public static SweptParts of(List<Part> parts, Interval openings) {
    List<Part> sorted = new ArrayList<>(parts);
    sorted.sort(PRECEDENCE);
    boolean tolerant = isAny(parts, part -> part.tolerance() != 0);
    return new SweptParts(List.copyOf(sorted), openings, tolerant, false);
  }

  /** These parts plus {@code more}. */
  public SweptParts with(List<Part> more) {
    return with(more, openings);
  }

  private SweptParts with(List<Part> more, Interval range) {
    List<Part> both = new ArrayList<>(all);
    both.addAll(more);
    return of(both, range);
  }

  /**
   * These parts plus a workpiece, over another opening range. It takes over what depends neither on
   * the openings nor on the workpiece.
   *
   * @param work at least one part; all of one rank, never empty, the same in both situations
   */
  public SweptParts withWork(List<Part> work, Interval range) {
    return everEmpty ? with(work, range) : new SweptParts(this, work, range);
  }

  /** The index of the first part that comes after {@code work}. */
  private int startOf(Part work) {
    int from = all.size();
    while (from > 0 && all.get(from - 1).rank() > work.rank()) {
      from--;
    }
    return from;
  }

  /** The rows of a class with those of the work behind, which repeat each other. */
  private long[] rowsWith(int kind, int from, List<Part> work, Interval range) {
    int end = rows[kind].length;
    int more = 0;
    for (Part part : work) {
      more += ClearanceClass.of(part).ordinal() == kind ? ROW : 0;
    }
    long[] both = Arrays.copyOf(rows[kind], end + more);
    for (int at = 0; at < end; at += ROW) {
      int index = (int) both[at + INDEX];
      if (!all.get(index).u().isConstant()) {
        writeU(all.get(index), range, false, both, at);
      }
      both[at + INDEX] = index < from ? index : index + work.size();
    }
    for (int i = 0; i < work.size(); i++) {
      if (ClearanceClass.of(work.get(i)).ordinal() == kind) {
        write(work.get(i), from + i, range, false, both, end);
        end += ROW;
      }
    }
    return both;
  }

  /** The same parts over another opening range. */
  public SweptParts over(Interval range) {
    return range.equals(openings) ? this : new SweptParts(all, range, tolerant, false);
  }

  /**
   * An optimistic bound over all openings at once: each part shrunk to what it covers at every
   * opening, so that its u limits may end up reversed. A position that is not clear even then is
   * clear at no opening.
   */
  public SweptParts core() {
    // Read once: another thread may set it at any time, and a second read may still see nothing.
    SweptParts made = core;
    if (made == null) {
      made = new SweptParts(all, openings, tolerant, true);
      core = made;
    }
    return made;
  }

  /**
   * The same without parts that are empty over some openings, as at best they may be. What is left
   * can only look clearer than it is.
   */
  public SweptParts neverEmpty() {
    if (!everEmpty) {
      return this;
    }
    List<Part> kept = all.stream().filter(part -> !isEverEmpty(part)).toList();
    return new SweptParts(kept, openings, tolerant, false);
  }

  /** Whether it is empty with the jaws closed or open, and so over some openings. */
  private static boolean isEverEmpty(Part part) {
    return part.u().closed().isReversed() || part.u().open().isReversed();
  }

  /** The same for a vise that may stand off by up to {@code off} along u and along v. */
  public SweptParts grown(long off) {
    return new SweptParts(
        all.stream().map(part -> part.grown(off)).toList(), openings, tolerant, false);
  }

  private static boolean isAny(List<Part> parts, Predicate<Part> such) {
    for (Part part : parts) {
      if (such.test(part)) {
        return true;
      }
    }
    return false;
  }

  private static List<Part> withoutEmpty(List<Part> all, Interval openings) {
    boolean some = isAny(all, part -> part.u().isEmpty(openings));
    return some ? all.stream().filter(part -> !part.u().isEmpty(openings)).toList() : all;
  }

  /** Every part, whether or not it is empty over the openings, in the same order. */
  List<Part> all() {
    return all;
  }

  /** The parts that are not empty over the openings, by rank and then by situation. */
  public List<Part> parts() {
    return parts;
  }

  public Interval openings() {
    return openings;
  }

  /** Whether any part has a tolerance above 0. */
  public boolean hasTolerance() {
    return tolerant;
  }

  /** See {@link Pair#meetsTable}, by index in the list. */
  boolean meetsTable(int index) {
    return meetsTable[index];
  }

  /** Whether any part of a class is checked against the table. */
  boolean someMeetTable(ClearanceClass kind) {
    return someMeetTable[kind.ordinal()];
  }

  /** The parts of a class, {@link #ROW} longs each. */
  long[] rows(ClearanceClass kind) {
    return rows[kind.ordinal()];
  }

  /** How far the parts of each class reach. */
  PartReach reach() {
    return reach;
  }

  /**
   * Length of the leading section of the {@link ClearanceClass#LOADING} rows that holds the parts
   * differing from cutting; the parts equal in both situations follow.
   */
  int onlyLoading() {
    return onlyLoading;
  }

  /** Fills the rows; returns {@link #onlyLoading}. */
  private int fill(boolean core) {
    int[] counts = new int[rows.length];
    int repeated = 0;
    for (int i = 0; i < parts.size(); i++) {
      counts[ClearanceClass.of(parts.get(i)).ordinal()] += ROW;
      repeated += repeats(i) ? ROW : 0;
    }
    for (int kind = 0; kind < counts.length; kind++) {
      rows[kind] = new long[counts[kind]];
    }
    int loading = counts[ClearanceClass.LOADING.ordinal()];
    int only = loading - repeated;
    counts[ClearanceClass.LOADING.ordinal()] = only;
    for (int i = parts.size() - 1; i >= 0; i--) {
      int kind = ClearanceClass.of(parts.get(i)).ordinal();
      int at = repeats(i) ? loading -= ROW : (counts[kind] -= ROW);
      write(parts.get(i), i, openings, core, rows[kind], at);
    }
    return only;
  }

  /**
   * Whether a part of {@link ClearanceClass#LOADING} equals its cutting counterpart, which precedes
   * it in the list.
   */
  private boolean repeats(int index) {
    Part part = parts.get(index);
    if (index == 0 || ClearanceClass.of(part) != ClearanceClass.LOADING) {
      return false;
    }
    Part before = parts.get(index - 1);
    return before.situation() == Situation.CUTTING
        && before.name().equals(part.name())
        && before.rank() == part.rank()
        && before.handle() == part.handle()
        && before.u().equals(part.u())
        && before.v().equals(part.v())
        && before.w().equals(part.w())
        && before.tolerance() == part.tolerance();
  }

  private static void write(
      Part part, int index, Interval openings, boolean core, long[] row, int at) {
    writeU(part, openings, core, row, at);
    row[at + V_LO] = part.v().lo();
    row[at + V_HI] = part.v().hi();
    row[at + W_LO] = part.w().lo();
    row[at + W_HI] = part.w().hi();
    row[at + TOLERANCE] = part.tolerance();
    row[at + INDEX] = index;
  }

  private static void writeU(Part part, Interval openings, boolean core, long[] row, int at) {
    OpeningInterval u = part.u();
    long lo = u.lo(openings.lo());
    long hi = u.hi(openings.lo());
    long loOpen = u.lo(openings.hi());
    long hiOpen = u.hi(openings.hi());
    row[at + U_LO] = core ? Math.max(lo, loOpen) : Math.min(lo, loOpen);
    row[at + U_HI] = core ? Math.min(hi, hiOpen) : Math.max(hi, hiOpen);
  }
}
