package org.jawroom.spark;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jawroom.launch.Main;

/**
 * A run in Spark within this process.
 *
 * @param out what was printed on standard output, lines ended as on Unix; {@code err} likewise
 */
record SparkRun(int status, String out, String err) {

  static SparkRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = CatalogueRun.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
    return new SparkRun(
        status,
        out.toString().replace(System.lineSeparator(), "\n"),
        err.toString().replace(System.lineSeparator(), "\n"));
  }

  /** As {@link #of} on two threads. */
  static SparkRun local(Path tables, Path out, String... more) {
    List<String> args = new ArrayList<>(List.of(tables.toString(), out.toString()));
    args.addAll(Arrays.asList(more));
    if (!args.contains("--master")) {
      args.addAll(List.of("--master", "local[2]"));
    }
    return of(args.toArray(String[]::new));
  }

  /** The reports of one machine, with remedies or as it has them by default. */
  static Path oneMachine(Path tables, Path folder, String... more) {
    List<String> args =
        new ArrayList<>(
            List.of("matrix", tables.toString(), "-o", folder.toString(), "--no-workbook"));
    args.addAll(Arrays.asList(more));
    StringWriter err = new StringWriter();
    int status =
        Main.run(
            args.toArray(String[]::new),
            new PrintWriter(new StringWriter()),
            new PrintWriter(err, true));
    assertEquals(0, status, err.toString());
    return folder;
  }

  /** Compares the joined parts of a report with the report of one machine; returns the parts. */
  static List<Path> assertSame(Path one, Path parts, String report) throws IOException {
    List<Path> files = parts(parts, report);
    ByteArrayOutputStream joined = new ByteArrayOutputStream();
    for (Path file : files) {
      joined.write(Files.readAllBytes(file));
    }
    assertArrayEquals(Files.readAllBytes(one.resolve(report)), joined.toByteArray(), report);
    return files;
  }

  /** The parts of a report in the order in which a shell lists {@code part-*}. */
  static List<Path> parts(Path out, String report) throws IOException {
    try (Stream<Path> all = Files.list(out.resolve(report))) {
      return all.filter(file -> file.getFileName().toString().startsWith("part-"))
          .sorted()
          .toList();
    }
  }
}
