package org.jawroom.report.survey.count;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import org.jawroom.report.limits.Margins;

/**
 * What moved between two reports, of the pairings that the conditions choose in either. Margins are
 * compared where both have one and the verdict stayed: under another verdict a margin has another
 * meaning.
 */
public final class Moved {
  private final String name;
  private final SurveyRows old;
  private final SurveyRows now;
  private final Map<Turn, Integer> turns = new LinkedHashMap<>();
  private final Margins changes = new Margins();

  /** The rows of both sides whose margin changed, the greatest loss first. */
  private final int[] before;

  private final int[] after;

  private int both;
  private int onlyOld;
  private int onlyNew;
  private int shrunk;
  private int grown;

  /** From one verdict to another. */
  public record Turn(String from, String to) {}

  /** Pairings that turned so. */
  public record Turned(Turn turn, int pairings) {}

  /** A pairing whose margin changed. */
  public record Changed(String machine, String vise, String verdict, long before, long after) {
    public long by() {
      return after - before;
    }
  }

  private Moved(SurveySide old, SurveySide now) {
    this.name = old.name();
    this.old = old.rows();
    this.now = now.rows();
    int[] befores = new int[this.now.size()];
    int[] afters = new int[this.now.size()];
    int count = 0;
    for (int row = 0; row < afters.length; row++) {
      int was = old.rowOf(now, row);
      if (!now.isChosen(row) && !old.isChosen(was)) {
        continue;
      }
      if (was < 0) {
        onlyNew++;
      } else if (pair(was, row)) {
        befores[count] = was;
        afters[count++] = row;
      }
    }
    for (int row : old.chosen()) {
      onlyOld += now.rowOf(old, row) < 0 ? 1 : 0;
    }
    int[] order =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparingLong(i -> by(befores[i], afters[i])))
            .mapToInt(Integer::intValue)
            .toArray();
    before = IntStream.of(order).map(i -> befores[i]).toArray();
    after = IntStream.of(order).map(i -> afters[i]).toArray();
  }

  static Moved of(SurveySide old, SurveySide now) {
    return new Moved(old, now);
  }

  /** Whether the margin changed under the same verdict. */
  private boolean pair(int was, int is) {
    both++;
    String from = old.text(SurveyRows.VERDICT, was);
    String to = now.text(SurveyRows.VERDICT, is);
    if (!from.equals(to)) {
      turns.merge(new Turn(from, to), 1, Integer::sum);
      return false;
    }
    OptionalLong margin = old.margin(was);
    OptionalLong margins = now.margin(is);
    if (margin.isEmpty() || margins.isEmpty()) {
      return false;
    }
    long by = by(was, is);
    changes.add(by);
    shrunk += by < 0 ? 1 : 0;
    grown += by > 0 ? 1 : 0;
    return by != 0;
  }

  private long by(int was, int is) {
    return now.margin(is).getAsLong() - old.margin(was).getAsLong();
  }

  /** The name of the earlier report. */
  public String name() {
    return name;
  }

  /** The pairings of both reports. */
  public int both() {
    return both;
  }

  public int onlyOld() {
    return onlyOld;
  }

  public int onlyNew() {
    return onlyNew;
  }

  public int shrunk() {
    return shrunk;
  }

  public int grown() {
    return grown;
  }

  /** The changes of all margins that can be compared, 0 among them. */
  public Margins changes() {
    return changes;
  }

  /** The most frequent first. */
  public List<Turned> turns() {
    List<Turned> all = new ArrayList<>();
    turns.forEach((turn, pairings) -> all.add(new Turned(turn, pairings)));
    all.sort(Comparator.comparingInt(Turned::pairings).reversed());
    return all;
  }

  /** The number of margins that changed. */
  public int changed() {
    return after.length;
  }

  /** A changed margin, from the greatest loss to the greatest gain; of equals as they come. */
  public Changed changed(int rank) {
    int is = after[rank];
    return new Changed(
        now.machine(is),
        now.vise(is),
        now.text(SurveyRows.VERDICT, is),
        old.margin(before[rank]).getAsLong(),
        now.margin(is).getAsLong());
  }
}
