package org.jawroom.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks and writes what came of it, beside what must come of it. */
public final class Bench {
  private final Map<String, Double> micros = new TreeMap<>();
  private final Map<Integer, Double> growth = new TreeMap<>();
  private final StringBuilder text = new StringBuilder();

  private Bench(Collection<RunResult> results) {
    for (RunResult result : results) {
      double score = result.getPrimaryResult().getScore();
      String guards = result.getParams().getParam("guards");
      if (guards == null) {
        micros.put(result.getPrimaryResult().getLabel(), score);
      } else {
        growth.put(Integer.valueOf(guards), score);
      }
    }
  }

  /**
   * {@code Bench FOLDER}: writes {@code results.md} there.
   *
   * @throws RunnerException if JMH cannot run
   */
  public static void main(String[] args) throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include(SpeedBenchmark.class.getSimpleName())
                    .include(GrowthBenchmark.class.getSimpleName())
                    .build())
            .run();
    Path file = Path.of(args[0]).resolve("results.md");
    try {
      Files.writeString(file, new Bench(results).told());
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
  }

  private String told() {
    line("# Results");
    line("");
    line(
        "%s; %d processors; %s %s; one thread, warm. Made by `mvn -q -Pbench test`.",
        LocalDate.now(),
        Runtime.getRuntime().availableProcessors(),
        System.getProperty("java.vm.name"),
        System.getProperty("java.version"));
    line("Pairings: %s.", SpeedBenchmark.mix());
    line("");
    line("| what | µs a pairing | a second |");
    line("| --- | ---: | ---: |");
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
    double most = growth.values().stream().mapToDouble(d -> d).max().orElse(1);
    growth.forEach(
        (guards, time) ->
            line(
                "%3d guards %8.1f µs, %5.2f a guard  %s",
                guards,
                time,
                time / guards,
                "█".repeat((int) Math.max(1, Math.round(60 * time / most)))));
    line("```");
    return text.toString();
  }

  private void row(String what, String label) {
    double time = micros.getOrDefault(label, Double.NaN);
    line("| %s | %.2f | %,.0f |", what, time, 1e6 / time);
  }

  private void ratio(String what, String slow, String fast, int must) {
    double times = micros.getOrDefault(slow, Double.NaN) / micros.getOrDefault(fast, Double.NaN);
    line("| %s | %.0f%s | %d |", what, times, times >= must ? "" : " (too few)", must);
  }

  private void line(String format, Object... values) {
    List<Object> all = List.of(values);
    text.append(String.format(Locale.ROOT, format, all.toArray())).append('\n');
  }
}
