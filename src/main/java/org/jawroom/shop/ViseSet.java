package org.jawroom.shop;

import java.util.List;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Require;
import org.jawroom.shop.vise.Vise;

/**
 * Vises that are to stand on one table together.
 *
 * @param members kinds of vise in the order of the rows, no kind twice
 * @param machines names of the machines to try it on; empty: all
 */
public record ViseSet(String name, List<Member> members, List<String> machines) {

  /** The most vises of a set. */
  public static final int MOST = 8;

  /** So many vises of a kind, at least one. */
  public record Member(Vise vise, int count) {
    public Member {
      if (count < 1) {
        throw new IllegalArgumentException("count " + count);
      }
    }
  }

  public ViseSet {
    Require.named("set", name);
    members = List.copyOf(members);
    machines = List.copyOf(machines);
    int count = members.stream().mapToInt(Member::count).sum();
    if (count < 1 || count > MOST) {
      throw new IllegalArgumentException("set " + name + " has " + count + " vises");
    }
    if (members.stream().map(member -> member.vise().name()).distinct().count() < members.size()) {
      throw new IllegalArgumentException("set " + name + " has a vise twice");
    }
  }

  /** Whether it is to be tried on a machine. */
  public boolean isFor(Machine machine) {
    return machines.isEmpty() || machines.contains(machine.name());
  }

  /** How many vises it has. */
  public int count() {
    return members.stream().mapToInt(Member::count).sum();
  }
}
