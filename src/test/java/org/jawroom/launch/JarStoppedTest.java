package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.jawroom.reference.random.BigShop;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The JAR stopped while its second Java works; run once it is packed. */
class JarStoppedTest {

  /** Small enough for a second Java, and seconds of work. */
  private static final int SIZE = 130;

  @TempDir private Path folder;
  private Path out;
  private Process first;
  private ProcessHandle second;

  @BeforeEach
  void startAndWaitUntilItWrites() throws Exception {
    Files.copy(Path.of("target", "jawroom.jar"), folder.resolve("jawroom.jar"));
    BigShop.write(BigShop.shop(SIZE, SIZE, 1), folder.resolve("tables"));
    out = folder.resolve("out");
    first = run();
    while (first.isAlive() && parts() == 0) {
      Thread.sleep(1);
    }
    second = first.children().findFirst().orElseThrow(() -> new AssertionError("one Java only"));
    assertEquals(List.of(), published());
  }

  @AfterEach
  void end() throws InterruptedException {
    first.destroyForcibly().waitFor();
    second.destroyForcibly();
  }

  @Test
  void firstJava_askedToStop_returnsWhenTheSecondHasEndedAndNothingIsPublished() throws Exception {
    assumeTrue(first.supportsNormalTermination(), "needs a signal that asks to stop");
    first.destroy();
    assertTrue(first.waitFor(60, TimeUnit.SECONDS), "does not stop");

    assertEquals(128 + 15, first.exitValue());
    assertTrue(!second.isAlive(), "the second Java goes on");
    assertEquals(List.of(), all());
  }

  /** A process that is killed has no time to say so to the other. */
  @Test
  void firstJava_killed_takesTheSecondWithItAndNothingIsPublished() throws Exception {
    first.destroyForcibly().waitFor();
    while (parts() > 0) {
      Thread.sleep(1);
    }
    assertEquals(List.of(), published());
  }

  @Test
  void bothJavas_killed_leaveFilesThatTheNextRunRemoves() throws Exception {
    second.destroyForcibly();
    first.waitFor();
    assertTrue(parts() > 0, "killed in work");
    assertEquals(List.of(), published());

    Process next = run();
    assertTrue(next.waitFor(120, TimeUnit.SECONDS), "hangs");
    assertEquals(0, next.exitValue());
    assertEquals(List.of("pairings.csv", "remedies.csv", "unknowns.csv"), all());
  }

  private Process run() throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-jar",
            folder.resolve("jawroom.jar").toString(),
            "matrix",
            folder.resolve("tables").toString(),
            "-o",
            out.toString(),
            "--no-workbook");
    // What Maven was given is not for the people's Java.
    builder.environment().remove("JAVA_TOOL_OPTIONS");
    return builder
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  private long parts() throws IOException {
    return all().stream().filter(name -> name.endsWith(".part")).count();
  }

  private List<String> published() throws IOException {
    return all().stream().filter(name -> !name.startsWith(".")).toList();
  }

  private List<String> all() throws IOException {
    if (!Files.exists(out)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(out)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
