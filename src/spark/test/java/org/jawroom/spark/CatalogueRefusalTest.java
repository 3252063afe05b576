package org.jawroom.spark;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused, with which line and which exit status. */
class CatalogueRefusalTest {
  private static final Path DEMO = Path.of("inputs/demo");

  @TempDir private Path folder;

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "tables",
        "tables out more",
        "tables out --master",
        "tables out --all",
        "tables foo:bar"
      })
  void wrongUse_isOneLineAndTheUsage(String args) {
    SparkRun run = SparkRun.of(args.isEmpty() ? new String[0] : args.split(" "));
    assertEquals(2, run.status());
    assertEquals(2, run.err().lines().count(), run.err());
    assertTrue(run.err().endsWith(CatalogueOptions.USAGE + "\n"), run.err());
  }

  @Test
  void noMaster_isWrongUse() {
    SparkRun run = SparkRun.of(DEMO.toString(), folder.resolve("out").toString());
    assertEquals(2, run.status());
    assertEquals(
        "Say where Spark runs: --master local[2], or an option of spark-submit.\n", run.err());
  }

  @Test
  void unknownMaster_isWrongUse() {
    SparkRun run = SparkRun.local(DEMO, folder.resolve("out"), "--master", "somewhere");
    assertEquals(2, run.status());
    assertTrue(run.err().startsWith("Spark does not start: "), run.err());
    assertTrue(run.err().contains("somewhere"), run.err());
  }

  @Test
  void missingTables_areUnreadable() {
    SparkRun run = SparkRun.local(folder.resolve("none"), folder.resolve("out"));
    assertEquals(3, run.status());
    assertEquals(
        folder.resolve("none") + " could not be read: there is no such file or folder\n",
        run.err());
  }

  @Test
  void faults_areListedAndNothingIsWritten() throws IOException {
    Files.writeString(folder.resolve("machines.csv"), "machine\n");
    SparkRun run = SparkRun.local(folder, folder.resolve("out"));
    assertEquals(1, run.status());
    assertTrue(run.err().contains("Nothing was written"), run.err());
    assertFalse(Files.exists(folder.resolve("out")));
  }

  @Test
  void folderThatIsThere_isLeftAlone() throws IOException {
    Path out = Files.createDirectory(folder.resolve("out"));
    Path kept = Files.writeString(out.resolve("kept.txt"), "kept");
    SparkRun run = SparkRun.local(DEMO, out);
    assertEquals(2, run.status());
    assertEquals(out + " is there already; name a new folder for the reports.\n", run.err());
    assertEquals("kept", Files.readString(kept));
  }
}
