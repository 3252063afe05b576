package org.jawroom.app.choice;

import java.io.PrintWriter;
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
    return new NamedRange<>(shop.machines(), Machine::name, new Pairs(shop, err)::machine)
        .of(range, new Pairs(shop, NamedRange.SILENT)::machine, err)
        .map(
            machines ->
                new MachineRange(
                    shop.withMachines(machines), machines.get(0).equals(shop.machines().get(0))));
  }
}
