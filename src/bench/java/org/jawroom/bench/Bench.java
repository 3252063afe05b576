package org.jawroom.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.BenchmarkResult;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmarks and writes what came of it, beside what must come of it. What is held against
 * each other is timed by turns, and of all iterations the median counts, so that a neighbour that
 * keeps the machine busy for a while is not taken for slowness of one or the other.
 */
public final class Bench {
  private static final int ROUNDS = 3;
  private static final List<String> BY_TURNS = List.of("place", "overlay", "verdict", "gridSweep");

  private final Map<String, List<Double>> micros = new TreeMap<>();
  private final Map<Integer, List<Double>> growth = new TreeMap<>();
  private final StringBuilder text = new StringBuilder();

  private Bench() {}

  /**
   * {@code Bench FOLDER}: writes {@code results.md} there.
   *
   * @throws RunnerException if JMH cannot run
   */
  public static void main(String[] args) throws RunnerException {
    Bench bench = new Bench();
    for (int round = 0; round < ROUNDS; round++) {
      for (String name : BY_TURNS) {
        bench.run(SpeedBenchmark.class, name);
      }
    }
    bench.run(SpeedBenchmark.class, "gridSweepOverOpenings");
    bench.run(GrowthBenchmark.class, "place");
    Path file = Path.of(args[0]).resolve("results.md");
    try {
      Files.writeString(file, bench.results());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private void run(Class<?> benchmarks, String name) throws RunnerException {
    String only = "\\." + benchmarks.getSimpleName() + "\\." + name + "$";
    for (RunResult result : new Runner(new OptionsBuilder().include(only).build()).run()) {
      String guards = result.getParams().getParam("guards");
      List<Double> times =
          guards == null
              ? micros.computeIfAbsent(name, key -> new ArrayList<>())
              : growth.computeIfAbsent(Integer.valueOf(guards), key -> new ArrayList<>());
      for (BenchmarkResult fork : result.getBenchmarkResults()) {
        for (IterationResult iteration : fork.getIterationResults()) {
          times.add(iteration.getPrimaryResult().getScore());
        }
      }
    }
  }

  /** The median; not a number if nothing was timed. */
  private static double median(List<Double> times) {
    List<Double> rising = times.stream().sorted().toList();
    int middle = rising.size() / 2;
    if (rising.isEmpty()) {
      return Double.NaN;
    }
    return rising.size() % 2 == 1
        ? rising.get(middle)
        : (rising.get(middle - 1) + rising.get(middle)) / 2;
  }

  private String results() {
    line("# Results");
    line("");
    line(
        "%s; %d processors; %s %s; one thread, warm; medians. Made by `mvn -q -Pbench test`.",
        LocalDate.now(),
        Runtime.getRuntime().availableProcessors(),
        System.getProperty("java.vm.name"),
        System.getProperty("java.version"));
    line("Pairings: %s.", SpeedBenchmark.mix());
    line("");
    line("| what | µs a pairing | a second | least and most of the iterations, µs |");
    line("| --- | ---: | ---: | ---: |");
    row("best margin, place and limiting pair", "place");
    row("every verdict, usable opening included", "verdict");
    row("yardstick: 1 mm grid, yes or no", "gridSweep");
    row("yardstick: polygon overlay (JTS), yes or no", "overlay");
    row("yardstick: 1 mm grid over openings of 1 mm", "gridSweepOverOpenings");
    line("");
    line("| how many times as fast | is | must |");
    line("| --- | ---: | ---: |");
    ratio("best margin, place and limiting pair, beside the grid", "gridSweep", "place", 75);
    ratio("the same beside the overlay", "overlay", "place", 100);
    ratio("every verdict, beside the grid over openings", "gridSweepOverOpenings", "verdict", 50);
    line("");
    line("Best margin, place and limiting pair with more box guards a machine:");
    line("");
    line("```");
    double most = growth.values().stream().mapToDouble(Bench::median).max().orElse(1);
    growth.forEach((guards, times) -> bar(guards, median(times), most));
    line("```");
    return text.toString();
  }

  private void bar(int guards, double time, double most) {
    line(
        "%3d guards %8.1f µs, %5.2f a guard  %s",
        guards, time, time / guards, "█".repeat((int) Math.max(1, Math.round(60 * time / most))));
  }

  private void row(String what, String label) {
    List<Double> times = micros.get(label);
    double time = median(times);
    line(
        "| %s | %.2f | %,.0f | %.2f to %.2f |",
        what, time, 1e6 / time, Collections.min(times), Collections.max(times));
  }

  private void ratio(String what, String slow, String fast, int must) {
    double times = median(micros.get(slow)) / median(micros.get(fast));
    line("| %s | %.0f%s | %d |", what, times, times >= must ? "" : " (too few)", must);
  }

  private void line(String format, Object... values) {
    List<Object> all = List.of(values);
    text.append(String.format(Locale.ROOT, format, all.toArray())).append('\n');
  }
}
