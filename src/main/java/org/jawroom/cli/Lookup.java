package org.jawroom.cli;

import java.util.List;
import java.util.stream.IntStream;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Vise;
import org.jawroom.tables.cell.Nearest;

/** Machines and vises by the names given on the command line. */
record Lookup(List<String> machines, List<String> vises) {

  static Lookup of(Shop shop) {
    return new Lookup(
        shop.machines().stream().map(Machine::name).toList(), shop.vises().stream().map(Vise::name).toList());
  }

  /** Which machine is meant; else -1. */
  int machine(String name) {
    return find(name, machines);
  }

  /** Which vise is meant; else -1. */
  int vise(String name) {
    return find(name, vises);
  }

  /** The line for a machine that is not there. */
  String noMachine(String name) {
    return unknown("machine", name, machines, find(name, vises) >= 0 ? "vise" : "");
  }

  /** The line for a vise that is not there. */
  String noVise(String name) {
    return unknown("vise", name, vises, find(name, machines) >= 0 ? "machine" : "");
  }

  /** Where none of {@code names} is written so, case does not count. */
  private static int find(String name, List<String> names) {
    int exact = names.indexOf(name);
    return exact >= 0
        ? exact
        : IntStream.range(0, names.size())
            .filter(i -> names.get(i).equalsIgnoreCase(name))
            .findFirst()
            .orElse(-1);
  }

  private static String unknown(String what, String name, List<String> names, String instead) {
    return "There is no " + what + " \"" + name + "\" in these tables"
        + (instead.isEmpty()
            ? Nearest.hint(name, names)
            : "; a " + instead + " is named so: the machine comes first");
  }
}
