package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jawroom.app.output.ExitStatus;
import org.junit.jupiter.api.Test;

class SecondJavaTest {
  @Test
  void statusOf_javaThatCouldNotStart_isNone() {
    assertEquals(OptionalInt.empty(), SecondJava.statusOf(1));
    assertEquals(OptionalInt.empty(), SecondJava.statusOf(99));
  }

  @Test
  void statusOf_commandThatRan_isThatOfTheCommand() {
    assertEquals(OptionalInt.of(ExitStatus.DONE), SecondJava.statusOf(100));
    assertEquals(OptionalInt.of(ExitStatus.REFUSED), SecondJava.statusOf(101));
    assertEquals(OptionalInt.of(ExitStatus.WRONG_USE), SecondJava.statusOf(102));
    assertEquals(OptionalInt.of(ExitStatus.UNREADABLE), SecondJava.statusOf(103));
    assertEquals(OptionalInt.of(ExitStatus.BUG), SecondJava.statusOf(170));
  }

  /** What a Java that was killed while it wrote an archive has left is none. */
  @Test
  void ran_isTrueOfACommandThatEndedAlone() {
    assertEquals(
        List.of(100, 101, 102, 103, 170),
        IntStream.range(0, 256).filter(SecondJava::ran).boxed().toList());
  }

  /** 128 and the signal: common practice of POSIX shells and of Java's own {@code Process}. */
  @Test
  void statusOf_killedJava_isNeitherACommandsNorBegunAgain() {
    assertEquals(OptionalInt.of(137), SecondJava.statusOf(128 + 9));
    assertEquals(OptionalInt.of(143), SecondJava.statusOf(128 + 15));
    assertEquals(OptionalInt.of(104), SecondJava.statusOf(104));
  }

  /** A child that does not see its parent leaves the command to it, and has printed nothing. */
  @Test
  void main_underAnotherParent_doesNotRun() throws Exception {
    Process child =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-D" + SecondJava.FIRST + "=" + Long.MAX_VALUE,
                "-cp",
                System.getProperty("java.class.path"),
                SecondJava.class.getName(),
                "--version")
            .redirectErrorStream(true)
            .start();
    assertEquals("", new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
    assertEquals(OptionalInt.empty(), SecondJava.statusOf(child.waitFor()));
  }
}
