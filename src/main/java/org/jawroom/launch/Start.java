package org.jawroom.launch;

import java.util.OptionalInt;
import org.jawroom.app.UnreadableNames;

/** What the JAR starts: small work in a quick Java of its own ({@link QuickStart}), other here. */
public final class Start {
  private Start() {}

  /** PairingRuns a command and ends the process with its exit status. */
  public static void main(String[] args) {
    OptionalInt status =
        UnreadableNames.line(args).isPresent() ? OptionalInt.empty() : QuickStart.run(args);
    if (status.isPresent()) {
      System.exit(status.getAsInt());
    }
    Main.main(args);
  }
}
