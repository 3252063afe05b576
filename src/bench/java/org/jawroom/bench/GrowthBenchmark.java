package org.jawroom.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How best margin, place and limiting pair grow with the box guards around and on the table. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@OperationsPerInvocation(Pairings.COUNT)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class GrowthBenchmark {

  /** Box guards of each machine. */
  @Param({"4", "8", "16", "32", "64"})
  public int guards;

  private Pairings pairings;

  @Setup
  public void prepare() {
    pairings = new Pairings(guards, false);
  }

  @Benchmark
  public long place() {
    long sum = 0;
    for (int i = 0; i < Pairings.COUNT; i++) {
      sum += pairings.place(i);
    }
    return sum;
  }
}
