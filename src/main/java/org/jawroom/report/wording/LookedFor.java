package org.jawroom.report.wording;

import java.util.List;
import org.jawroom.shop.machine.GuardKinds;
import org.jawroom.shop.machine.Machine;

/** Guards that nobody has recorded as looked for on a machine: they may be there all the same. */
public final class LookedFor {
  private LookedFor() {}

  /** The kinds of guard that are neither named as looked for nor listed for the machine. */
  public static List<String> not(Machine machine) {
    return GuardKinds.notLookedFor(machine);
  }

  /** The same in words, for the machine's row. */
  static String words(Machine machine) {
    List<String> kinds = not(machine);
    return kinds.isEmpty()
        ? "all usual guards looked for"
        : "not looked for: " + String.join(", ", kinds);
  }
}
