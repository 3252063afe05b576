package org.jawroom.report.survey.count;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.jawroom.plan.cover.Cover;
import org.jawroom.plan.cover.MinimumCover;
import tech.tablesaw.selection.Selection;

/**
 * The fewest kinds of vise that leave each machine a comfortable one, as if there were enough of
 * each kind, and the machines that no vise serves.
 *
 * @param served how many machines have a comfortable vise
 * @param vises those taken, in the order of the report
 * @param atLeast how many vises are needed at least
 * @param unserved the machines without a comfortable vise, in the order of the report
 */
public record Coverage(int served, List<Serving> vises, int atLeast, List<Unserved> unserved) {

  /**
   * A vise that is taken.
   *
   * @param machines on which it is comfortable
   * @param alone those of them that no other vise taken serves
   */
  public record Serving(String vise, int machines, int alone) {}

  /**
   * A machine without a comfortable vise.
   *
   * @param standing how many vises are of use there
   * @param best the largest margin among them; empty if none of them has one
   */
  public record Unserved(String machine, int standing, OptionalLong best) {}

  /** Which vises are comfortable on a machine, and what the others leave. */
  private static final class OnMachine {
    private final int number;
    private int standing;
    private OptionalLong best = OptionalLong.empty();

    OnMachine(int number) {
      this.number = number;
    }

    void stands(OptionalLong margin) {
      standing++;
      if (margin.isPresent()) {
        best = OptionalLong.of(Math.max(margin.getAsLong(), best.orElse(margin.getAsLong())));
      }
    }
  }

  static Coverage of(SurveyRows rows, Selection chosen) {
    Map<String, OnMachine> machines = new LinkedHashMap<>();
    Map<String, BitSet> vises = new LinkedHashMap<>();
    for (int row : chosen) {
      OnMachine machine =
          machines.computeIfAbsent(rows.machine(row), name -> new OnMachine(machines.size()));
      BitSet served = vises.computeIfAbsent(rows.vise(row), name -> new BitSet());
      if (rows.standing().contains(row)) {
        machine.stands(rows.margin(row));
      }
      if (rows.comfortable().contains(row)) {
        served.set(machine.number);
      }
    }
    List<BitSet> sets = List.copyOf(vises.values());
    List<String> names = List.copyOf(vises.keySet());
    Cover cover = MinimumCover.of(machines.size(), sets);
    List<Serving> serving = new ArrayList<>();
    for (int set : cover.sets()) {
      BitSet alone = (BitSet) sets.get(set).clone();
      cover.sets().stream().filter(other -> other != set).forEach(o -> alone.andNot(sets.get(o)));
      serving.add(new Serving(names.get(set), sets.get(set).cardinality(), alone.cardinality()));
    }
    List<Unserved> unserved = new ArrayList<>();
    BitSet without = new BitSet();
    cover.unheld().forEach(without::set);
    machines.forEach(
        (name, machine) -> {
          if (without.get(machine.number)) {
            unserved.add(new Unserved(name, machine.standing, machine.best));
          }
        });
    return new Coverage(machines.size() - unserved.size(), serving, cover.atLeast(), unserved);
  }

  public boolean isProven() {
    return atLeast == vises.size();
  }
}
