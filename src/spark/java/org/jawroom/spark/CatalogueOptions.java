package org.jawroom.spark;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The command line.
 *
 * @param tables a folder of CSV files or a workbook, where the driver runs
 * @param out the folder of the reports, as Hadoop names it: {@code hdfs://…}, or a local path
 * @param remedies whether remedies are wanted of more pairings than they are computed for anyhow
 * @param parquet whether the reports are written as Parquet, too
 * @param master where Spark runs, unless {@code spark-submit} says so
 */
record CatalogueOptions(
    Path tables, String out, boolean remedies, boolean parquet, Optional<String> master) {

  static final String USAGE =
      "Usage: spark-submit --class org.jawroom.spark.CatalogueRun jawroom-spark.jar TABLES OUT"
          + " [--remedies] [--parquet] [--master URL]";

  private static final String REMEDIES = "--remedies";
  private static final String PARQUET = "--parquet";
  private static final String MASTER = "--master";

  /**
   * Parses the arguments.
   *
   * @throws IllegalArgumentException with one line that names what is wrong
   */
  static CatalogueOptions of(String... args) {
    List<String> paths = new ArrayList<>();
    Set<String> switches = new HashSet<>();
    Optional<String> master = Optional.empty();
    for (Iterator<String> rest = List.of(args).iterator(); rest.hasNext(); ) {
      String arg = rest.next();
      if (arg.equals(MASTER)) {
        if (!rest.hasNext()) {
          throw new IllegalArgumentException("--master takes a URL, such as local[2].");
        }
        master = Optional.of(rest.next());
      } else if (arg.equals(REMEDIES) || arg.equals(PARQUET)) {
        switches.add(arg);
      } else if (arg.startsWith("-")) {
        throw new IllegalArgumentException("There is no option " + arg + ".");
      } else {
        paths.add(arg);
      }
    }
    if (paths.size() != 2 || paths.stream().anyMatch(String::isBlank)) {
      throw new IllegalArgumentException("Name the tables and a new folder for the reports.");
    }
    return new CatalogueOptions(
        path(paths.get(0)),
        new org.apache.hadoop.fs.Path(paths.get(1)).toString(),
        switches.contains(REMEDIES),
        switches.contains(PARQUET),
        master);
  }

  private static Path path(String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException wrong) {
      throw new IllegalArgumentException(
          "\"" + text + "\" cannot be the name of a file: " + wrong.getReason(), wrong);
    }
  }
}
