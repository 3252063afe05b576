package org.jawroom.placement.bolting;

import java.util.Optional;
import java.util.function.Supplier;
import org.jawroom.placement.space.Strips;

/**
 * Remembers where a vise can be tapped square: the pairing and each of its jobs ask for it. Worked
 * out on first use, by any thread, always with the same result.
 */
public final class Tapped {
  private Found last;

  private record Found(PreparedMachine on, Optional<Strips> places) {}

  Tapped() {}

  /** The places on a machine, as {@code places} finds them. */
  Optional<Strips> on(PreparedMachine machine, Supplier<Optional<Strips>> places) {
    // Read once: another thread may set it at any time.
    Found found = last;
    if (found == null || found.on != machine) {
      found = new Found(machine, places.get());
      last = found;
    }
    return found.places;
  }
}
