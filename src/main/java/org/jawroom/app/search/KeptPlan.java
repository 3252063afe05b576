package org.jawroom.app.search;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
   * The kind of vise that stands on each machine now, both as indices in {@code shop}; of several
   * kinds the one of which most stand there, then the first of the rows; turned on its swivel base
   * it is still the vise of its row. Empty if nothing stands on any of its machines.
   */
  public static Optional<Map<Integer, List<Integer>>> standing(Shop shop) {
    Map<Integer, List<Integer>> kinds = new HashMap<>();
    for (int machine = 0; machine < shop.machines().size(); machine++) {
      String name = shop.machines().get(machine).name();
      Map<Integer, Integer> counts = new LinkedHashMap<>();
      for (Standing standing : shop.standing()) {
        if (standing.machine().name().equals(name)) {
          counts.merge(kind(shop, standing.vise().row()), 1, Integer::sum);
        }
      }
      int most = 0;
      for (Map.Entry<Integer, Integer> kind : counts.entrySet()) {
        if (kind.getValue() > most) {
          most = kind.getValue();
          kinds.put(machine, List.of(kind.getKey()));
        }
      }
    }
    return kinds.isEmpty() ? Optional.empty() : Optional.of(kinds);
  }

  private static int kind(Shop shop, String name) {
    return shop.vises().stream().map(Vise::name).toList().indexOf(name);
  }

  /**
   * The kind of vise now on each machine, both as indices in {@code shop}. A machine that has left
   * the shop or the cell is noted and left out; a vise that has left is {@link Wishes#GONE}.
   *
   * @return empty, with every fault listed, if the file cannot be used
   */
  public static Optional<Map<Integer, List<Integer>>> read(Path file, Shop shop, PrintWriter err)
      throws UnreadableInput {
    PlanRows rows = PlanRows.read(FileRead.bytes(file));
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
        kinds.put(machine, List.of(vise < 0 ? Wishes.GONE : vise));
      }
    }
    return Optional.of(kinds);
  }
}
