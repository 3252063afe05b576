package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jawroom.fixture.PartOfDemo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is printed is printed whole, or the status says that it was not. */
class StandardOutputTest {
  private static final String DEMO = "inputs/demo";

  @TempDir private static Path folder;

  /** Every command that prints, each with what it prints for programs and for people. */
  static Stream<List<String>> printing() throws IOException {
    Path tables = folder.resolve("small");
    String small = (Files.exists(tables) ? tables : PartOfDemo.in(tables)).toString();
    List<String> pairing = List.of("explain", small, PartOfDemo.MILL, PartOfDemo.VISE);
    return Stream.of(
        List.of("--help"),
        List.of("--version"),
        List.of("help"),
        List.of("help", "card"),
        List.of("matrix", "--help"),
        List.of("generate-completion"),
        List.of("check", small),
        pairing,
        with(pairing, "--json"),
        with(pairing, "--job", "clamp plate"),
        with(pairing, "--job", "clamp plate", "--json"),
        List.of("compare", DEMO, "inputs/demo.xlsx"),
        List.of("compare", DEMO, DEMO, "--csv"),
        List.of("survey", "reports", "--by", "machine,vise", "--all"),
        List.of("matrix", small, "-o", "-"),
        List.of("matrix", small, "-o", folder.resolve("m").toString()),
        List.of("assess", small, "-o", folder.resolve("a").toString()),
        List.of("plan", small, "-o", folder.resolve("p").toString()),
        List.of("tape", small, "-o", folder.resolve("tape.pdf").toString()),
        List.of("page", small, "-o", folder.resolve("page.html").toString()),
        List.of(
            "draw",
            small,
            PartOfDemo.MILL,
            PartOfDemo.VISE,
            "-o",
            folder.resolve("drawing.svg").toString()),
        List.of(
            "card",
            small,
            PartOfDemo.MILL,
            PartOfDemo.VISE,
            "-o",
            folder.resolve("card.pdf").toString()),
        List.of(
            "reconcile",
            "src/test/resources/org/jawroom/checks/hand",
            "-o",
            folder.resolve("r").toString()),
        List.of("template", "--csv", folder.resolve("t").toString()));
  }

  private static List<String> with(List<String> args, String... more) {
    return Stream.concat(args.stream(), Stream.of(more)).toList();
  }

  /** Takes so many bytes. */
  private static final class Disk extends OutputStream {
    private final ByteArrayOutputStream taken = new ByteArrayOutputStream();
    private final int room;
    private final String full;

    Disk(int room, String full) {
      this.room = room;
      this.full = full;
    }

    @Override
    public void write(int one) throws IOException {
      if (taken.size() == room) {
        throw new IOException(full);
      }
      taken.write(one);
    }
  }

  @ParameterizedTest
  @MethodSource("printing")
  void run_ontoAFullDisk_isStatus3AndOneLine(List<String> args) throws IOException {
    String[] line = args.toArray(String[]::new);
    removeTemplate();
    Disk roomy = new Disk(Integer.MAX_VALUE, "");
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    assertEquals(0, Main.run(line, new StandardStream(roomy), new StandardStream(said)));
    byte[] whole = roomy.taken.toByteArray();
    for (int room : new int[] {whole.length / 2, whole.length - 1}) {
      removeTemplate();
      Disk full = new Disk(room, "No space left on device");
      ByteArrayOutputStream err = new ByteArrayOutputStream();
      assertEquals(3, Main.run(line, new StandardStream(full), new StandardStream(err)));
      List<String> lines = err.toString(StandardCharsets.UTF_8).lines().toList();
      assertEquals(
          "could not write to standard output: No space left on device",
          lines.get(lines.size() - 1));
      assertTrue(lines.size() == 1 || said.size() > 0, lines.toString());
      assertEquals(
          new String(whole, 0, room, StandardCharsets.ISO_8859_1),
          full.taken.toString(StandardCharsets.ISO_8859_1));
    }
  }

  @ParameterizedTest
  @MethodSource("printing")
  void run_intoAClosedPipe_saysNothingOfIt(List<String> args) throws IOException {
    removeTemplate();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(
            args.toArray(String[]::new),
            new StandardStream(new Disk(0, "Broken pipe")),
            new StandardStream(err));
    assertEquals(3, status);
    assertTrue(!err.toString(StandardCharsets.UTF_8).contains("pipe"), err::toString);
    assertTrue(!err.toString(StandardCharsets.UTF_8).contains("standard output"), err::toString);
  }

  /** Notes and warnings are part of the answer. */
  @Test
  void run_thatCannotSayWhatItHasToSay_isStatus3() {
    int status =
        Main.run(
            new String[] {"matrix", DEMO, "-o", "-"},
            new StandardStream(new ByteArrayOutputStream()),
            new StandardStream(new Disk(0, "No space left on device")));
    assertEquals(3, status);
  }

  @Test
  void run_refusedTablesOntoAFullDisk_staysRefused() throws IOException {
    Path tables = Files.createDirectories(folder.resolve("bad"));
    Files.writeString(tables.resolve("machines.csv"), "machine\nmill\n");
    int status =
        Main.run(
            new String[] {"check", tables.toString()},
            new StandardStream(new Disk(0, "No space left on device")),
            new StandardStream(new ByteArrayOutputStream()));
    assertEquals(1, status);
  }

  /** The process's own streams, on the device that is always full. */
  @Test
  void process_ontoAFullDevice_isStatus3AndOneLine() throws Exception {
    File full = new File("/dev/full");
    assumeTrue(full.exists(), "needs the devices of Linux");
    for (String[] args : new String[][] {{"--version"}, {"matrix", DEMO, "-o", "-"}}) {
      Path err = folder.resolve("err.txt");
      Process process =
          ToolRun.command(128, args).redirectOutput(full).redirectError(err.toFile()).start();
      assertTrue(process.waitFor(120, TimeUnit.SECONDS), "hangs");
      assertEquals(3, process.exitValue());
      assertEquals(
          "could not write to standard output: No space left on device",
          Files.readString(err).strip());
    }
  }

  @Test
  void process_whoseReaderLeaves_endsQuietly() throws Exception {
    Path err = folder.resolve("err.txt");
    Process process =
        ToolRun.command(128, "matrix", DEMO, "-o", "-").redirectError(err.toFile()).start();
    process.getInputStream().close();
    assertTrue(process.waitFor(120, TimeUnit.SECONDS), "hangs");
    assertEquals(3, process.exitValue());
    assertEquals("", Files.readString(err));
  }

  @Test
  void matrix_printed_isPairingsCsv() throws IOException {
    Path reports = folder.resolve("printed");
    StringWriter out = new StringWriter();
    PrintWriter err = new PrintWriter(Writer.nullWriter());
    assertEquals(0, Main.run(new String[] {"matrix", DEMO, "-o", "-"}, new PrintWriter(out), err));
    assertEquals(
        0,
        Main.run(
            new String[] {"matrix", DEMO, "-o", reports.toString()},
            new PrintWriter(Writer.nullWriter()),
            err));
    assertEquals(Files.readString(reports.resolve("pairings.csv")), out.toString());
  }

  private static void removeTemplate() throws IOException {
    Path tables = folder.resolve("t");
    if (Files.exists(tables)) {
      try (Stream<Path> all = Files.list(tables)) {
        for (Path table : all.toList()) {
          Files.delete(table);
        }
      }
    }
  }
}
