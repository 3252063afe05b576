package org.jawroom.spark;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.io.Text;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.util.LongAccumulator;
import org.jawroom.app.input.Input;
import org.jawroom.app.output.ExitStatus;
import org.jawroom.app.output.PlainWriter;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.RemediesCsv;
import org.jawroom.report.matrix.ReportOptions;
import org.jawroom.report.wording.Finding;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.FileTrouble;
import org.jawroom.tables.source.grid.UnreadableInput;

/** Solves every pairing of the tables in Apache Spark, and writes the reports as parts. */
public final class CatalogueRun {
  /** The seconds that tasks have to end after a failure. */
  private static final int PATIENCE = 30;

  private final CatalogueOptions options;
  private final PrintWriter out;
  private final PrintWriter err;

  private CatalogueRun(CatalogueOptions options, PrintWriter out, PrintWriter err) {
    this.options = options;
    this.out = out;
    this.err = err;
  }

  /** Runs and, unless all went well, ends the process with the exit status. */
  public static void main(String[] args) {
    int status =
        run(
            args,
            PlainWriter.around(new PrintWriter(System.out, true, Charset.defaultCharset())),
            PlainWriter.around(new PrintWriter(System.err, true, Charset.defaultCharset())));
    if (status != ExitStatus.DONE) {
      System.exit(status);
    }
  }

  /** Runs on the given streams; the exit status is that of every jawroom command. */
  static int run(String[] args, PrintWriter out, PrintWriter err) {
    try {
      return new CatalogueRun(CatalogueOptions.of(args), out, err).run();
    } catch (IllegalArgumentException wrong) {
      err.println(wrong.getMessage());
      err.println(CatalogueOptions.USAGE);
      return ExitStatus.WRONG_USE;
    }
  }

  private int run() {
    try {
      Reading reading = Input.read(options.tables(), Map.of(), err);
      if (reading.shop().isEmpty()) {
        return Input.refuse(reading, err);
      }
      SparkConf conf = new SparkConf().setIfMissing("spark.app.name", "jawroom");
      options.master().ifPresent(conf::setMaster);
      if (!conf.contains("spark.master")) {
        err.println("Say where Spark runs: --master local[2], or an option of spark-submit.");
        return ExitStatus.WRONG_USE;
      }
      Optional<SparkSession> started = started(conf);
      if (started.isEmpty()) {
        return ExitStatus.WRONG_USE;
      }
      try (SparkSession session = started.get()) {
        return solve(session, reading);
      }
    } catch (UnreadableInput unreadable) {
      err.println(unreadable.getMessage());
      return ExitStatus.UNREADABLE;
    } catch (Exception failure) {
      return failed(failure);
    }
  }

  /** Empty, with one line on {@code err}, if Spark does not start: the master is none, mostly. */
  private Optional<SparkSession> started(SparkConf conf) {
    try {
      return Optional.of(SparkSession.builder().config(conf).getOrCreate());
    } catch (Exception refused) {
      err.println("Spark does not start: " + refused.getMessage());
      return Optional.empty();
    }
  }

  private int solve(SparkSession session, Reading reading) throws Exception {
    JavaSparkContext spark = JavaSparkContext.fromSparkContext(session.sparkContext());
    Path folder = new Path(options.out());
    FileSystem files = folder.getFileSystem(spark.hadoopConfiguration());
    if (files.exists(folder)) {
      err.println(options.out() + " is there already; name a new folder for the reports.");
      return ExitStatus.WRONG_USE;
    }
    Shop shop = reading.shop().orElseThrow();
    long pairings = (long) shop.machines().size() * shop.vises().size();
    boolean advised = options.remedies() || pairings <= ReportOptions.DETAILED;
    EnumMap<Finding, LongAccumulator> counts = new EnumMap<>(Finding.class);
    for (Finding finding : Finding.values()) {
      counts.put(finding, session.sparkContext().longAccumulator(finding.brief()));
    }
    Slices slices =
        new Slices(
            spark.broadcast(SentTables.of(options.tables(), reading)),
            counts,
            pairings,
            advised,
            spark.defaultParallelism());
    List<String> reports =
        advised ? List.of(PairingsCsv.FILE, RemediesCsv.FILE) : List.of(PairingsCsv.FILE);
    try {
      spark
          .parallelize(IntStream.range(0, slices.count()).boxed().toList(), slices.count())
          .flatMapToPair(slices)
          .saveAsHadoopFile(options.out(), String.class, Text.class, CsvParts.class);
      if (options.parquet()) {
        for (String report : reports) {
          ParquetCopy.write(session, options.out(), report);
        }
      }
    } catch (Exception failure) {
      // An unfinished folder would be in the way of the next run; tasks that still run would make
      // it
      // again.
      for (int second = 0; second < PATIENCE && isBusy(spark); second++) {
        Thread.sleep(1000);
      }
      files.delete(folder, true);
      throw failure;
    }
    print(pairings, counts, reports);
    return ExitStatus.DONE;
  }

  private static boolean isBusy(JavaSparkContext spark) {
    return Arrays.stream(spark.sc().statusTracker().getExecutorInfos())
        .anyMatch(executor -> executor.numRunningTasks() > 0);
  }

  private void print(
      long pairings, EnumMap<Finding, LongAccumulator> counts, List<String> reports) {
    out.println(pairings + " pairings");
    counts.forEach(
        (finding, count) -> {
          if (count.value() > 0) {
            out.println("  " + count.value() + "  " + finding.words());
          }
        });
    reports.forEach(report -> out.println("Written: " + options.out() + "/" + report));
  }

  /** A file that could not be read or written is not ours; anything else is. */
  private int failed(Exception failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof IOException file) {
        err.println("A file could not be read or written: " + FileTrouble.reason(file));
        return ExitStatus.UNREADABLE;
      }
    }
    err.println(
        "This is a bug of jawroom's. Please report it with the lines below and the tables.");
    failure.printStackTrace(err);
    return ExitStatus.BUG;
  }
}
