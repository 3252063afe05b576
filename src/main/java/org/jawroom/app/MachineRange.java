package org.jawroom.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;

/**
 * The machines of a partial run: a contiguous range in input order.
 *
 * @param shop with these machines only
 * @param isFirst whether the range starts with the shop's first machine
 */
public record MachineRange(Shop shop, boolean isFirst) {
  private static final List<String> BETWEEN = List.of("…", "...", "..");

  public static MachineRange whole(Shop shop) {
    return new MachineRange(shop, true);
  }

  /**
   * The range that {@code range} names: {@code A…B} or {@code A..B}, both ends included, or one
   * machine alone.
   *
   * @return empty, with one line on {@code err}, if it names none
   */
  public static Optional<MachineRange> of(Shop shop, String range, PrintWriter err) {
    Optional<MachineRange> part = found(shop, range);
    if (part.isPresent()) {
      return part;
    }
    Pairs pairs = new Pairs(shop, err);
    for (String between : BETWEEN) {
      int at = range.indexOf(between);
      if (at >= 0) {
        Optional<Machine> from = pairs.machine(range.substring(0, at).strip());
        Optional<Machine> to =
            from.flatMap(there -> pairs.machine(range.substring(at + between.length()).strip()));
        to.ifPresent(
            last ->
                err.println(
                    "\""
                        + last.name()
                        + "\" stands before \""
                        + from.get().name()
                        + "\" in these tables; name it first."));
        return Optional.empty();
      }
    }
    pairs.machine(range.strip());
    return Optional.empty();
  }

  /** Names may contain dots themselves, so every way to split the text is tried. */
  private static Optional<MachineRange> found(Shop shop, String range) {
    Pairs pairs = new Pairs(shop, new PrintWriter(PrintWriter.nullWriter()));
    int alone = index(shop, pairs, range);
    if (alone >= 0) {
      return Optional.of(cut(shop, alone, alone));
    }
    for (String between : BETWEEN) {
      for (int at = range.indexOf(between); at >= 0; at = range.indexOf(between, at + 1)) {
        int from = index(shop, pairs, range.substring(0, at));
        int to = index(shop, pairs, range.substring(at + between.length()));
        if (from >= 0 && from <= to) {
          return Optional.of(cut(shop, from, to));
        }
      }
    }
    return Optional.empty();
  }

  private static int index(Shop shop, Pairs pairs, String name) {
    return pairs.machine(name.strip()).map(shop.machines()::indexOf).orElse(-1);
  }

  private static MachineRange cut(Shop shop, int from, int to) {
    List<Machine> machines = shop.machines().subList(from, to + 1);
    return new MachineRange(
        new Shop(shop.settings(), machines, shop.vises(), shop.jobs(), shop.checks()), from == 0);
  }
}
