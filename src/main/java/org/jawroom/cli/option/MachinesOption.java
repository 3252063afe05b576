package org.jawroom.cli.option;

import java.io.PrintWriter;
import java.util.Optional;
import org.jawroom.app.choice.MachineRange;
import org.jawroom.shop.Shop;
import picocli.CommandLine.Option;

/** The option for a part of the machines. */
public final class MachinesOption {
  @Option(
      names = "--machines",
      order = 2,
      paramLabel = "A…B",
      description = "only the machines from A to B, in the order of the tables, or one alone")
  private String machines;

  /** The shop with these machines; empty, with one line on {@code err}, if there are none such. */
  public Optional<Shop> part(Shop shop, PrintWriter err) {
    return machines == null
        ? Optional.of(shop)
        : MachineRange.of(shop, machines, err).map(MachineRange::shop);
  }
}
