package org.jawroom.app.choice;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.cell.name.NearestName;

/**
 * Finds the machines, vises, jobs and sets that a command names; if no name matches exactly, it
 * ignores case and other equivalent spellings.
 */
public record Pairs(Shop shop, PrintWriter err) {

  /** Empty, with one line on {@code err}, if there is none. */
  public Optional<Machine> machine(String name) {
    return found("machine", name, machines(), vises()).map(shop.machines()::get);
  }

  /** Empty, with one line on {@code err}, if there is none. */
  public Optional<Vise> vise(String name) {
    return found("vise", name, vises(), machines()).map(shop.vises()::get);
  }

  /** Empty, with one line on {@code err}, if there is none. */
  public Optional<Job> job(String name) {
    List<String> jobs = shop.jobs().stream().map(Job::name).toList();
    return found("job", name, jobs, List.of()).map(shop.jobs()::get);
  }

  /** Empty, with one line on {@code err}, if there is none. */
  public Optional<ViseSet> set(String name) {
    List<String> sets = shop.sets().stream().map(ViseSet::name).toList();
    return found("set", name, sets, List.of()).map(shop.sets()::get);
  }

  private Optional<Integer> found(
      String what, String name, List<String> names, List<String> others) {
    Optional<Integer> index = index(name, names);
    if (index.isEmpty()) {
      String hint =
          index(name, others).isPresent()
              ? "; a "
                  + (what.equals("machine") ? "vise" : "machine")
                  + " is named so: the machine comes first"
              : NearestName.hint(name, names);
      err.println("There is no " + what + " \"" + name + "\" in these tables" + hint);
    }
    return index;
  }

  private static Optional<Integer> index(String name, List<String> names) {
    int exact = names.indexOf(name);
    return exact >= 0
        ? Optional.of(exact)
        : IntStream.range(0, names.size())
            .filter(i -> Names.key(names.get(i)).equals(Names.key(name)))
            .boxed()
            .findFirst();
  }

  private List<String> machines() {
    return shop.machines().stream().map(Machine::name).toList();
  }

  private List<String> vises() {
    return shop.vises().stream().map(Vise::name).toList();
  }
}
