package org.jawroom.launch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import org.jawroom.app.output.ExitStatus;
import org.junit.jupiter.api.Test;

class MainTest {
  /** Neither 1, "refused", nor anything from which a second Java seems not to have started. */
  @Test
  void run_errorOfOurs_isABugWithItsTrace() {
    PrintWriter broken =
        new PrintWriter(Writer.nullWriter()) {
          @Override
          public void write(String text, int from, int length) {
            throw new StackOverflowError("made by a test");
          }
        };
    StringWriter said = new StringWriter();

    int status = Main.run(new String[] {"--help"}, broken, new PrintWriter(said, true));

    assertEquals(ExitStatus.BUG, status, said::toString);
    assertTrue(said.toString().startsWith("This is a bug of jawroom's."), said::toString);
    assertTrue(said.toString().contains("made by a test"), said::toString);
  }
}
