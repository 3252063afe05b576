package org.jawroom.app.search;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jawroom.app.input.Input;
import org.jawroom.app.input.ReportFile;
import org.jawroom.plan.model.Wishes;
import org.jawroom.report.plan.PlanRows;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.source.grid.FileRead;
import org.jawroom.tables.source.grid.UnreadableInput;

/**
 * The current assignments: from a plan made earlier or written by hand, or from what the tables say
 * stands on the machines.
 */
public final class KeptPlan {
  private KeptPlan() {}

  /**
   * The kinds of vise that stand on each machine now, both as indices in {@code shop}, ascending;
   * turned on its swivel base a vise is still that of its row. Empty if nothing stands on any of
   * its machines.
   *
   * @param kinds the most kinds that a plan puts on a machine; where it puts one, several are taken
   *     for the one of which most stand there, then the first of the rows
   */
  public static Optional<Map<Integer, List<Integer>>> standing(Shop shop, int kinds) {
    Map<Integer, List<Integer>> standing = new HashMap<>();
    for (int machine = 0; machine < shop.machines().size(); machine++) {
      Map<Integer, Integer> counts = counts(shop, shop.machines().get(machine).name());
      if (!counts.isEmpty()) {
        standing.put(
            machine,
            kinds == 1 ? List.of(most(counts)) : counts.keySet().stream().sorted().toList());
      }
    }
    return standing.isEmpty() ? Optional.empty() : Optional.of(standing);
  }

  /** How many vises of each kind stand on a machine, in the order of the rows. */
  private static Map<Integer, Integer> counts(Shop shop, String machine) {
    Map<Integer, Integer> counts = new LinkedHashMap<>();
    for (Standing standing : shop.standing()) {
      if (standing.machine().name().equals(machine)) {
        counts.merge(kind(shop, standing.vise().row()), 1, Integer::sum);
      }
    }
    return counts;
  }

  private static int most(Map<Integer, Integer> counts) {
    int most = Collections.max(counts.values());
    return counts.entrySet().stream()
        .filter(kind -> kind.getValue() == most)
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  private static int kind(Shop shop, String name) {
    return shop.vises().stream().map(Vise::name).toList().indexOf(name);
  }

  /**
   * The kinds of vise now on each machine, both as indices in {@code shop}, ascending. A machine
   * that has left the shop or the cell is noted and left out; a vise that has left is {@link
   * Wishes#GONE}.
   *
   * @param most the most kinds that a plan puts on a machine; where it is 1, a machine may stand in
   *     the file only once
   * @return empty, with every fault listed, if the file cannot be used
   */
  public static Optional<Map<Integer, List<Integer>>> read(
      Path file, Shop shop, int most, PrintWriter err) throws UnreadableInput {
    PlanRows rows =
        PlanRows.read(FileRead.bytes(file, Input.heap()), ReportFile::delimiter, most > 1);
    if (!rows.faults().isEmpty()) {
      rows.faults().forEach(fault -> err.println(file + ": " + fault));
      err.println("Nothing was written; put the plan to keep right and run again.");
      return Optional.empty();
    }
    List<String> machines = shop.machines().stream().map(Machine::name).map(Names::key).toList();
    List<String> vises = shop.vises().stream().map(Vise::name).map(Names::key).toList();
    Map<Integer, List<Integer>> kinds = new HashMap<>();
    for (PlanRows.Row row : rows.rows()) {
      int machine = machines.indexOf(Names.key(row.machine()));
      int vise = vises.indexOf(Names.key(row.vise()));
      if (machine < 0) {
        err.println(
            "Note: \"" + row.machine() + "\" of " + file + " is not in this cell; left out.");
      } else if (!row.vise().isEmpty()) {
        if (vise < 0) {
          err.println(
              "Note: \""
                  + row.vise()
                  + "\" of "
                  + file
                  + " is no vise of these tables any more, so \""
                  + shop.machines().get(machine).name()
                  + "\" changes in any case.");
        }
        List<Integer> there = kinds.computeIfAbsent(machine, none -> new ArrayList<>());
        if (most == 1) {
          there.clear();
        }
        if (vise < 0 || !there.contains(vise)) {
          there.add(vise < 0 ? Wishes.GONE : vise);
        }
      }
    }
    kinds.values().forEach(there -> there.sort(null));
    return Optional.of(kinds);
  }
}
