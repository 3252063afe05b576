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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.TimeUnit;
import org.jawroom.app.Progress;

/**
 * Starts small work twice as fast as {@code java -jar} would: in a second Java that takes its
 * classes from an archive beside the JAR ({@link ClassArchive}) and does not optimize what is soon
 * over. No JAR can ask for either itself.
 *
 * <p>Whoever gives Java other options than how much memory it may take gets the Java they asked
 * for, and so does work on large tables, where optimizing pays.
 */
final class QuickStart {

  /**
   * Up to how many bytes of tables work is small: some hundred machines and vises. From a thousand
   * on, optimizing pays.
   */
  private static final long SMALL = 250_000;

  /** What a process ends with that was asked to end: 128 and the number of that signal. */
  static final int TERMINATED = 128 + 15;

  /** Far longer than moves that have begun take to be made. */
  private static final long STOPPING_SECONDS = 20;

  private QuickStart() {}

  /** The exit status of the command, or empty if it was not run: the work is to be done here. */
  static OptionalInt run(String[] args) {
    Optional<Path> jar = jar();
    List<String> options = ManagementFactory.getRuntimeMXBean().getInputArguments();
    if (jar.isEmpty() || !javaCan() || !isMemory(options) || !isSmall(args)) {
      return OptionalInt.empty();
    }
    try (ClassArchive archive = ClassArchive.beside(jar.get())) {
      Optional<Path> sound = archive.sound();
      boolean make =
          sound.isEmpty() && args.length > 0 && args[0].equals("matrix") && archive.claim();
      List<String> option =
          make ? archive.making() : sound.map(ClassArchive::using).stream().toList();
      int ended = waitFor(start(jar.get(), options, option, args));
      if (make && SecondJava.ran(ended)) {
        archive.settle();
      }
      OptionalInt status = SecondJava.statusOf(ended);
      return make && status.isEmpty() ? archive.keptStatus() : status;
    } catch (IOException cannot) {
      return OptionalInt.empty();
    }
  }

  /** Whether this is a Java that knows the options of {@link #start}. */
  private static boolean javaCan() {
    String name = System.getProperty("java.vm.name", "");
    return name.contains("OpenJDK") || name.contains("HotSpot");
  }

  /** Whether the options only say how much memory to take. */
  private static boolean isMemory(List<String> options) {
    return options.stream().allMatch(option -> option.matches("-Xm[sx]\\w+"));
  }

  /** Whether there are tables to read, small ones. */
  static boolean isSmall(String[] args) {
    long bytes = 0;
    for (int i = 1; i < args.length; i++) {
      if (!args[i - 1].equals("-o") && !args[i - 1].equals("--output")) {
        bytes += bytes(args[i]);
      }
    }
    return bytes > 0 && bytes <= SMALL;
  }

  /** How long a file is, or the tables of a folder; 0 for what is neither. */
  private static long bytes(String name) {
    File file = new File(name);
    File[] tables = file.listFiles((folder, table) -> table.endsWith(".csv"));
    return tables == null ? file.length() : Arrays.stream(tables).mapToLong(File::length).sum();
  }

  private static Process start(Path jar, List<String> options, List<String> archive, String[] args)
      throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(options);
    command.addAll(archive);
    command.addAll(
        List.of("-Xshare:auto", "-Xlog:disable", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    if (Progress.talksToAPerson()) {
      command.add("-D" + Progress.TERMINAL + "=true");
    }
    command.addAll(List.of("-cp", jar.toString(), SecondJava.class.getName()));
    command.addAll(List.of(args));
    // The end of its input tells the second Java that this one has ended, however it ended.
    return new ProcessBuilder(command)
        .inheritIO()
        .redirectInput(ProcessBuilder.Redirect.PIPE)
        .start();
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
        // Nobody interrupts the first thread; the work ends when it ends.
      } catch (IllegalStateException stopping) {
        // This Java is being stopped, and stops the other; nothing is to be begun again.
        return TERMINATED;
      }
    }
  }

  /** Returns when the process has ended, so that nothing is written after this Java has ended. */
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

  /** The JAR this class is in; in a build there is none. */
  private static Optional<Path> jar() {
    CodeSource source = QuickStart.class.getProtectionDomain().getCodeSource();
    if (source == null || source.getLocation() == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(Path.of(source.getLocation().toURI())).filter(Files::isRegularFile);
    } catch (URISyntaxException | IllegalArgumentException | FileSystemNotFoundException odd) {
      return Optional.empty();
    }
  }
}
