package org.jawroom.launch;

import java.io.File;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;

/**
 * Starts small work twice as fast as {@code java -jar} does: in a child JVM that loads its classes
 * from an archive beside the JAR ({@link ClassArchive}) and runs without the optimizing compiler,
 * which does not pay off in a short run. A JAR cannot request any option itself.
 *
 * <p>Until the child runs, this class and what it uses do without lambdas and streams: the JVM
 * links each at its first use, which takes as long as all the work here.
 *
 * <p>The matrix of large tables, where optimizing pays off, runs in a child JVM that inlines less
 * than a JVM does by itself: a run takes seconds, and compiling takes a third of them.
 *
 * <p>If the user gives the JVM other options than memory sizes, the command runs in that JVM; so
 * does other work on large tables.
 */
final class QuickStart {

  /**
   * The largest size of tables, in bytes, that counts as small: some hundred machines and vises.
   * From a thousand on, optimizing pays off.
   */
  private static final long SMALL = 250_000;

  private static final String MATRIX = "matrix";

  /**
   * Options of a short run. Most methods run a few hundred times only: what is inlined is compiled
   * again and again.
   */
  private static final List<String> SHORT =
      List.of(
          "-XX:+UseSerialGC",
          "-XX:TieredStopAtLevel=1",
          "-XX:C1MaxInlineLevel=5",
          "-XX:C1MaxInlineSize=20");

  /** Options of a run of seconds or more. */
  private static final List<String> LONG =
      List.of("-XX:+UseParallelGC", "-XX:InlineSmallCode=1000", "-XX:FreqInlineSize=75");

  /** The environment variables from which a JVM takes options. */
  private static final List<String> OPTIONS =
      List.of("JAVA_TOOL_OPTIONS", "_JAVA_OPTIONS", "JDK_JAVA_OPTIONS");

  /** The exit status after SIGTERM: 128 plus the number of the signal. */
  static final int TERMINATED = 128 + 15;

  /** Far longer than a begun series of renames takes. */
  private static final long STOPPING_SECONDS = 20;

  private QuickStart() {}

  /**
   * Runs the command in a child JVM. Returns its exit status, or empty if it did not run; then the
   * caller runs it in this JVM.
   */
  static OptionalInt run(String[] args) {
    Optional<Path> jar = jar();
    List<String> options = options();
    if (jar.isEmpty() || !javaCan() || !isMemory(options)) {
      return OptionalInt.empty();
    }
    long tables = tables(args);
    boolean small = tables <= SMALL;
    if (tables == 0 || !small && !args[0].equals(MATRIX)) {
      return OptionalInt.empty();
    }
    try (ClassArchive archive = ClassArchive.beside(jar.get())) {
      Optional<Path> sound = archive.sound();
      boolean make = small && sound.isEmpty() && args[0].equals(MATRIX) && archive.claim();
      List<String> option = List.of();
      if (make) {
        option = archive.making();
      } else if (sound.isPresent()) {
        option = List.of(ClassArchive.using(sound.get()));
      }
      int ended = waitFor(start(jar.get(), options, option, small ? SHORT : LONG, args));
      if (make && SecondJava.ran(ended)) {
        archive.settle();
      }
      OptionalInt status = SecondJava.statusOf(ended);
      return make && status.isEmpty() ? archive.keptStatus() : status;
    } catch (IOException cannot) {
      return OptionalInt.empty();
    }
  }

  /**
   * The options given to this JVM. Management knows all of them, but asking it takes as long as the
   * rest of this class; without a variable that sets options there are none before {@code -jar}.
   */
  private static List<String> options() {
    String[] given = ProcessHandle.current().info().arguments().orElse(new String[0]);
    boolean none = given.length > 0 && given[0].equals("-jar");
    for (String variable : OPTIONS) {
      none &= System.getenv(variable) == null;
    }
    return none ? List.of() : ManagementFactory.getRuntimeMXBean().getInputArguments();
  }

  /** Whether this JVM supports the options of {@link #start}. */
  private static boolean javaCan() {
    String name = System.getProperty("java.vm.name", "");
    return name.contains("OpenJDK") || name.contains("HotSpot");
  }

  /** Whether the options set only memory sizes. */
  private static boolean isMemory(List<String> options) {
    for (String option : options) {
      if (!option.matches("-Xm[sx]\\w+")) {
        return false;
      }
    }
    return true;
  }

  /** The size in bytes of the tables that the arguments name; 0 if they name none. */
  private static long tables(String[] args) {
    long bytes = 0;
    for (int i = 1; i < args.length; i++) {
      if (!args[i - 1].equals("-o") && !args[i - 1].equals("--output")) {
        bytes += bytes(args[i]);
      }
    }
    return bytes;
  }

  /** The size of a file, or of all CSV files in a folder; 0 if {@code name} is neither. */
  private static long bytes(String name) {
    File file = new File(name);
    String[] inside = file.list();
    if (inside == null) {
      return file.length();
    }
    long bytes = 0;
    for (String table : inside) {
      if (table.endsWith(".csv")) {
        bytes += new File(file, table).length();
      }
    }
    return bytes;
  }

  private static Process start(
      Path jar, List<String> options, List<String> archive, List<String> tuning, String[] args)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(archive);
    command.addAll(List.of("-Xshare:auto", "-Xlog:disable", "-XX:-UsePerfData"));
    command.addAll(tuning);
    // The child watches this process: when it ends, even by SIGKILL, the child stops.
    command.add("-D" + SecondJava.FIRST + "=" + ProcessHandle.current().pid());
    command.addAll(List.of("-cp", jar.toString(), SecondJava.class.getName()));
    command.addAll(List.of(args));
    return new ProcessBuilder(command).inheritIO().start();
  }

  private static int waitFor(Process process) {
    Thread stop = new Thread(() -> stop(process));
    Runtime.getRuntime().addShutdownHook(stop);
    while (true) {
      try {
        int status = process.waitFor();
        Runtime.getRuntime().removeShutdownHook(stop);
        return status;
      } catch (InterruptedException goOn) {
        // No code interrupts this thread; wait until the child ends.
      } catch (IllegalStateException stopping) {
        // This JVM is shutting down and the hook stops the child; the command must not run again
        // here.
        return TERMINATED;
      }
    }
  }

  /** Returns after the child has ended, so that nothing is written after this JVM's end. */
  private static void stop(Process process) {
    process.destroy();
    try {
      if (!process.waitFor(STOPPING_SECONDS, TimeUnit.SECONDS)) {
        process.destroyForcibly().waitFor();
      }
    } catch (InterruptedException goOn) {
      process.destroyForcibly();
    }
  }

  /** The JAR with this class; empty in a build, which has none. */
  private static Optional<Path> jar() {
    CodeSource source = QuickStart.class.getProtectionDomain().getCodeSource();
    if (source == null || source.getLocation() == null) {
      return Optional.empty();
    }
    try {
      Path place = Path.of(source.getLocation().toURI());
      return Files.isRegularFile(place) ? Optional.of(place) : Optional.empty();
    } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException odd) {
      return Optional.empty();
    }
  }
}
