package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Bolt;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Slots;
import org.jawroom.shop.Vise;
import org.jawroom.standards.TNut;

/**
 * Finds, for a pairing without blanks, why each turn and mount that holds nowhere fails, and by how
 * much.
 */
public final class MissSearch {
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;
  private final OptionalLong thread;

  public MissSearch(Settings settings, Machine machine, Vise vise) {
    this.settings = settings;
    this.machine = machine;
    this.vise = vise;
    Dimension width = machine.slots().width();
    this.thread = width.isKnown() ? TNut.boltFor(width.length()) : OptionalLong.empty();
  }

  /**
   * The misses, sorted by cause and then by shortfall; mounts that need a blank column are left
   * out.
   */
  public List<Miss> misses() {
    List<Miss> misses = new ArrayList<>();
    for (Orientation turn : Orientation.values()) {
      boolean allowed = vise.turns().contains(turn) && machine.turns().contains(turn);
      if (vise.mounts().isEmpty()) {
        misses.add(new Miss(turn, "", Miss.Cause.NO_BOLTS, "", 0));
      }
      for (Mount mount : vise.mounts()) {
        if (!allowed) {
          misses.add(new Miss(turn, mount.name(), Miss.Cause.TURN_NOT_ALLOWED, "", 0));
        } else {
          miss(turn, mount).ifPresent(misses::add);
        }
      }
    }
    misses.sort(Comparator.comparing(Miss::cause).thenComparingLong(Miss::shortBy));
    return misses;
  }

  private Optional<Miss> miss(Orientation turn, Mount mount) {
    Slots slots = machine.slots();
    if (slots.count() == 0 || (slots.width().isKnown() && thread.isEmpty())) {
      return Optional.of(new Miss(turn, mount.name(), Miss.Cause.NO_SLOT, "", 0));
    }
    if (needsBlank(mount)) {
      return Optional.empty();
    }
    long bolt = thread.getAsLong();
    for (int i = 0; i < mount.bolts().size(); i++) {
      Bolt hole = mount.bolts().get(i);
      long narrowest = Math.min(hole.holeU().length(), hole.holeV().length());
      if (narrowest < bolt) {
        return Optional.of(
            new Miss(
                turn,
                mount.name(),
                Miss.Cause.HOLE_TOO_SMALL,
                where(mount, turn, i),
                bolt - narrowest));
      }
    }
    Slotted slotted = Slotted.of(machine);
    Optional<Slotted.Shortage> shortage = slotted.shortage(mount, turn, bolt);
    if (shortage.isPresent()) {
      Slotted.Shortage found = shortage.get();
      Miss.Cause cause = found.along() ? Miss.Cause.ALONG_SLOTS : Miss.Cause.ACROSS_SLOTS;
      return Optional.of(
          new Miss(turn, mount.name(), cause, where(mount, turn, found.bolt()), found.by()));
    }
    boolean hangs =
        slotted.places(mount, turn, bolt).stream()
            .noneMatch(
                places ->
                    Overhang.allowed(settings, machine, vise, turn)
                        .flatMap(places::meet)
                        .isPresent());
    return hangs
        ? Optional.of(new Miss(turn, mount.name(), Miss.Cause.OVERHANG, "", 0))
        : Optional.empty();
  }

  private boolean needsBlank(Mount mount) {
    Slots slots = machine.slots();
    return slots.width().isBlank() || !slots.placesKnown() || mount.hasBlank();
  }

  /** The position of a bolt within its mount, along the axis of greatest extent. */
  private static String where(Mount mount, Orientation turn, int index) {
    if (mount.bolts().size() == 1) {
      return "only";
    }
    long[] xs =
        mount.bolts().stream().mapToLong(b -> turn.x(b.u().length(), b.v().length())).toArray();
    long[] ys =
        mount.bolts().stream().mapToLong(b -> turn.y(b.u().length(), b.v().length())).toArray();
    long spanX = span(xs);
    long spanY = span(ys);
    return spanX >= spanY
        ? (2 * xs[index] < lowest(xs) + highest(xs) ? "left" : "right")
        : (2 * ys[index] < lowest(ys) + highest(ys) ? "front" : "rear");
  }

  private static long span(long[] places) {
    return highest(places) - lowest(places);
  }

  private static long lowest(long[] places) {
    return Arrays.stream(places).min().getAsLong();
  }

  private static long highest(long[] places) {
    return Arrays.stream(places).max().getAsLong();
  }
}
