package org.jawroom.cli.option;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jawroom.app.choice.Pairs;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;

/** Finds the machines of a cell. */
public record CellChoice(Shop shop, PrintWriter err) {

  /**
   * The machines in the order of the tables. Without names, candidates are among them: even without
   * {@code buy} a candidate may be the cheapest thing that holds a job.
   *
   * @param names separated by {@code ;}; empty: all
   * @return empty, with a line for each, if some name cannot belong to the cell
   */
  public Optional<List<Machine>> machines(Optional<String> names, boolean buy) {
    if (names.isEmpty()) {
      shop.machines().stream()
          .filter(machine -> buy && machine.candidate() && machine.price().isEmpty())
          .forEach(
              machine ->
                  err.println(
                      "Note: the candidate \""
                          + machine.name()
                          + "\" has no price, so it cannot be bought."));
      return Optional.of(shop.machines());
    }
    Pairs pairs = new Pairs(shop, err);
    List<Machine> named = new ArrayList<>();
    boolean sound = true;
    for (String name : names.get().split(";")) {
      if (!name.isBlank()) {
        Optional<Machine> machine = pairs.machine(name.strip());
        sound &= machine.isPresent() && canBeOfTheCell(machine.get(), buy);
        machine.ifPresent(named::add);
      }
    }
    if (sound && named.isEmpty()) {
      err.println("--machines names none; leave it out for all.");
    }
    return sound && !named.isEmpty()
        ? Optional.of(shop.machines().stream().filter(named::contains).toList())
        : Optional.empty();
  }

  private boolean canBeOfTheCell(Machine machine, boolean buy) {
    if (!machine.candidate() || (buy && machine.price().isPresent())) {
      return true;
    }
    err.println(
        "\""
            + machine.name()
            + "\" is a candidate: "
            + (buy
                ? "give it a price, so that it can be bought."
                : "with --buy it can be bought."));
    return false;
  }
}
