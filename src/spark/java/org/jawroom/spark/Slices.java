package org.jawroom.spark;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.apache.hadoop.io.Text;
import org.apache.spark.api.java.function.PairFlatMapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.util.LongAccumulator;
import org.jawroom.advice.Advice;
import org.jawroom.advice.Advisor;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.RemediesCsv;
import org.jawroom.report.wording.Finding;
import scala.Tuple2;

/**
 * Solves slices of the pairings, machines then vises in input order, into rows of the reports: the
 * name of a report with some of its rows, without the last line feed, which the writer of a part
 * adds. The first slice begins with the header rows.
 */
final class Slices implements PairFlatMapFunction<Integer, String, Text> {
  private static final long serialVersionUID = 1;

  /** The pairings solved before their rows are handed on; more cost memory. */
  private static final int TOGETHER = 256;

  /** The most parts, since Spark names them with five digits. */
  private static final long MOST = 100_000;

  /** So many pairings take some seconds. */
  private static final long QUICK = 1_000_000;

  private static final long SLOW = 10_000;

  /** The least number of slices for each processor, so that none waits long for another. */
  private static final long EACH = 4;

  private final Broadcast<SentTables> tables;
  private final EnumMap<Finding, LongAccumulator> counts;
  private final long pairings;
  private final boolean advised;
  private final int count;

  /**
   * Cuts the pairings into slices.
   *
   * @param counts receive the number of pairings of each finding
   * @param advised whether remedies are computed
   * @param processors of all executors
   */
  Slices(
      Broadcast<SentTables> tables,
      EnumMap<Finding, LongAccumulator> counts,
      long pairings,
      boolean advised,
      int processors) {
    this.tables = tables;
    this.counts = counts;
    this.pairings = pairings;
    this.advised = advised;
    this.count = count(pairings, advised ? SLOW : QUICK, processors);
  }

  /** At least one, and never more than there are pairings. */
  private static int count(long pairings, long size, int processors) {
    long most = Math.min(MOST, Math.max(1, pairings));
    long wanted = Math.max((pairings + size - 1) / size, EACH * processors);
    return (int) Math.min(most, wanted);
  }

  /** The number of slices. */
  int count() {
    return count;
  }

  private long start(int slice) {
    // Without an overflow up to 9 × 10^13 pairings.
    return Math.multiplyExact(pairings, (long) slice) / count;
  }

  @Override
  public Iterator<Tuple2<String, Text>> call(Integer slice) throws Exception {
    Catalogue catalogue = tables.value().catalogue();
    long start = start(slice);
    long end = start(slice + 1);
    return Stream.concat(
            slice == 0 ? headers() : Stream.empty(),
            LongStream.range(0, (end - start + TOGETHER - 1) / TOGETHER)
                .map(batch -> start + batch * TOGETHER)
                .boxed()
                .flatMap(from -> rows(solve(catalogue, from, Math.min(end, from + TOGETHER)))))
        .iterator();
  }

  private Stream<Tuple2<String, Text>> headers() throws IOException {
    ByteArrayOutputStream remedies = new ByteArrayOutputStream();
    new RemediesCsv(remedies, true).finish();
    return rows(PairingsCsv.header(), remedies.toByteArray());
  }

  private List<Advice> solve(Catalogue catalogue, long from, long end) {
    int vises = catalogue.shop().vises().size();
    List<Advice> solved = new ArrayList<>();
    for (long next = from; next < end; ) {
      PreparedMachine machine = catalogue.machine((int) (next / vises));
      long endOfMachine = Math.min(end, (next / vises + 1) * vises);
      for (; next < endOfMachine; next++) {
        solved.add(advice(catalogue, catalogue.solved(machine, (int) (next % vises))));
      }
    }
    return solved;
  }

  private Advice advice(Catalogue catalogue, SolvedPairing solved) {
    return advised
        ? Advisor.advise(catalogue.shop().settings(), solved)
        : Advice.bare(solved.outcome());
  }

  private Stream<Tuple2<String, Text>> rows(List<Advice> solved) {
    solved.forEach(one -> counts.get(Finding.of(one.outcome())).add(1L));
    ByteArrayOutputStream remedies = new ByteArrayOutputStream();
    try {
      RemediesCsv report = new RemediesCsv(remedies, false);
      for (Advice one : solved) {
        report.add(one);
      }
      report.finish();
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return rows(PairingsCsv.rows(solved), remedies.toByteArray());
  }

  private Stream<Tuple2<String, Text>> rows(byte[] pairingRows, byte[] remedyRows) {
    Stream<Tuple2<String, Text>> both =
        Stream.of(
            new Tuple2<>(PairingsCsv.FILE, text(pairingRows)),
            new Tuple2<>(RemediesCsv.FILE, text(remedyRows)));
    return both.limit(advised ? 2 : 1).filter(one -> one._2().getLength() > 0);
  }

  private static Text text(byte[] rows) {
    Text text = new Text();
    text.set(rows, 0, Math.max(0, rows.length - 1));
    return text;
  }
}
