package org.jawroom.bench;

import java.util.concurrent.TimeUnit;
import org.jawroom.placement.pairing.Outcome;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.proof.FreeSpaces;
import org.jawroom.reference.proof.OverlayFreeSpace;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The solver and the yardsticks on the same pairings: one box guard a machine besides its gaps. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@OperationsPerInvocation(Pairings.COUNT)
@Fork(1)
@Warmup(iterations = 6, time = 2)
@Measurement(iterations = 5, time = 2)
public class SpeedBenchmark {
  private Pairings pairings;

  @Setup
  public void prepare() {
    pairings = new Pairings(1, true);
  }

  /** Best margin, recommended place and limiting pair. */
  @Benchmark
  public long place() {
    long sum = 0;
    for (int i = 0; i < Pairings.COUNT; i++) {
      sum += pairings.place(i);
    }
    return sum;
  }

  /** Every verdict, usable opening and all. */
  @Benchmark
  public long verdict() {
    long sum = 0;
    for (int i = 0; i < Pairings.COUNT; i++) {
      sum += pairings.solve(i).verdict().ordinal();
    }
    return sum;
  }

  /** Yes or no, by the 1 mm grid. */
  @Benchmark
  public int gridSweep() {
    int clear = 0;
    for (int i = 0; i < Pairings.COUNT; i++) {
      clear += GridSweep.isClear(pairings.boxes(i)) ? 1 : 0;
    }
    return clear;
  }

  /**
   * The same, and where the answer is no the most openings, 1 mm apart, in a row. Once over the
   * pairings takes a quarter of a minute.
   */
  @Benchmark
  @Warmup(iterations = 1)
  @Measurement(iterations = 3)
  public int gridSweepOverOpenings() {
    int most = 0;
    for (int i = 0; i < Pairings.COUNT; i++) {
      if (!GridSweep.isClear(pairings.boxes(i))) {
        most += GridSweep.mostOpenings(pairings.boxes(i), pairings.openings(i));
      }
    }
    return most;
  }

  /** Yes or no, by polygon overlay. */
  @Benchmark
  public int overlay() {
    int clear = 0;
    for (int i = 0; i < Pairings.COUNT; i++) {
      for (FreeSpaces space : pairings.spaces(i)) {
        if (!OverlayFreeSpace.of(space.region(), space.forbidden()).isEmpty()) {
          clear++;
          break;
        }
      }
    }
    return clear;
  }

  /** What the shop is like, for the results. */
  static String mix() {
    Pairings all = new Pairings(1, false);
    int[] counts = new int[Verdict.values().length];
    for (int i = 0; i < Pairings.COUNT; i++) {
      Outcome outcome = all.solve(i);
      counts[outcome.verdict().ordinal()]++;
    }
    StringBuilder mix = new StringBuilder();
    for (Verdict verdict : Verdict.values()) {
      if (counts[verdict.ordinal()] > 0) {
        mix.append(mix.length() == 0 ? "" : ", ")
            .append(counts[verdict.ordinal()])
            .append(' ')
            .append(verdict.code());
      }
    }
    return mix.toString();
  }
}
