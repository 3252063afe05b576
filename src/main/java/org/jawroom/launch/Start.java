package org.jawroom.launch;

import java.util.OptionalInt;
import org.jawroom.app.input.UnreadableNames;

/**
 * The main class of the JAR: runs small work and large matrices in a child JVM ({@link
 * QuickStart}), other work here.
 */
public final class Start {
  private Start() {}

  /** Runs a command and ends the process with its exit status. */
  public static void main(String[] args) {
    OptionalInt status =
        UnreadableNames.line(args).isPresent() ? OptionalInt.empty() : QuickStart.run(args);
    if (status.isPresent()) {
      System.exit(status.getAsInt());
    }
    Main.main(args);
  }
}
