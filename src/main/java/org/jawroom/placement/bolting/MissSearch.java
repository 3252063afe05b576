package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jawroom.clearance.Certainty;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.placement.bolting.slot.Anchors;
import org.jawroom.placement.bolting.slot.Shortage;
import org.jawroom.placement.bolting.slot.Slotted;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/**
 * Finds, for a pairing without blanks, why each turn and mount that holds nowhere fails, and by how
 * much.
 */
public final class MissSearch {
  private final PreparedMachine prepared;
  private final Settings settings;
  private final Machine machine;
  private final Vise vise;

  public MissSearch(PreparedMachine prepared, Vise vise) {
    this.prepared = prepared;
    this.settings = prepared.settings();
    this.machine = prepared.machine();
    this.vise = vise;
  }

  /**
   * The misses, sorted by cause and then by shortfall; mounts that need a blank column are left
   * out.
   */
  public List<Miss> misses() {
    List<Miss> misses = new ArrayList<>();
    for (Orientation turn : Orientation.values()) {
      boolean allowed = vise.turns().contains(turn) && machine.turns().contains(turn);
      if (vise.mounts().isEmpty() && !vise.hasClampMount()) {
        misses.add(new Miss(turn, "", Miss.Cause.NO_BOLTS, "", 0));
      }
      for (Mount mount : vise.mounts()) {
        if (!allowed) {
          misses.add(new Miss(turn, mount.name(), Miss.Cause.TURN_NOT_ALLOWED, "", 0));
        } else {
          miss(turn, mount).ifPresent(misses::add);
        }
      }
      if (vise.hasClampMount()) {
        clampMiss(turn, allowed).ifPresent(misses::add);
      }
    }
    misses.sort(Comparator.comparing(Miss::cause).thenComparingLong(Miss::shortBy));
    return misses;
  }

  private Optional<Miss> miss(Orientation turn, Mount mount) {
    if (hasNoSlot()) {
      return Optional.of(new Miss(turn, mount.name(), Miss.Cause.NO_SLOT, "", 0));
    }
    if (needsBlank() || mount.isOpen()) {
      return Optional.empty();
    }
    long smallest = prepared.threads().get(prepared.threads().size() - 1);
    long narrowestOfAll = Length.ENDLESS;
    for (int i = 0; i < mount.bolts().size(); i++) {
      Bolt hole = mount.bolts().get(i);
      long narrowest = Math.min(hole.holeU().length(), hole.holeV().length());
      narrowestOfAll = Math.min(narrowestOfAll, narrowest);
      if (narrowest < smallest) {
        return Optional.of(
            new Miss(
                turn,
                mount.name(),
                Miss.Cause.HOLE_TOO_SMALL,
                where(mount, turn, i),
                smallest - narrowest));
      }
    }
    Anchors anchors = Anchors.ofBolts(mount, prepared.threadFor(narrowestOfAll).orElseThrow());
    Optional<Shortage> shortage = Shortage.of(prepared.slotted(), anchors, turn);
    if (shortage.isPresent()) {
      Shortage found = shortage.get();
      Miss.Cause cause = found.along() ? Miss.Cause.ALONG_SLOTS : Miss.Cause.ACROSS_SLOTS;
      return Optional.of(
          new Miss(turn, mount.name(), cause, where(mount, turn, found.anchor()), found.by()));
    }
    boolean hangs =
        prepared.slotted().places(anchors, turn).stream()
            .noneMatch(
                places ->
                    Overhang.allowed(settings, machine, vise, turn)
                        .flatMap(places::meet)
                        .isPresent());
    return hangs
        ? Optional.of(new Miss(turn, mount.name(), Miss.Cause.OVERHANG, "", 0))
        : Optional.empty();
  }

  private Optional<Miss> clampMiss(Orientation turn, boolean allowed) {
    String name = Fastening.CLAMPS;
    if (!allowed) {
      return Optional.of(new Miss(turn, name, Miss.Cause.TURN_NOT_ALLOWED, "", 0));
    }
    if (hasNoSlot()) {
      return Optional.of(new Miss(turn, name, Miss.Cause.NO_SLOT, "", 0));
    }
    if (needsBlank() || Footprint.base(vise, turn).isEmpty()) {
      return Optional.empty();
    }
    long thread = prepared.threads().get(0);
    Anchors anchors = Anchors.ofClamps(vise, settings.clampRoom(), thread, Certainty.AT_WORST);
    boolean holds =
        !anchors.all().get(0).u().isReversed()
            && Slotted.length(machine) >= 2 * thread
            && prepared
                .slotted()
                .places(anchors, turn)
                .flatMap(
                    places ->
                        Overhang.clamped(machine, vise, settings, turn, Certainty.AT_WORST)
                            .flatMap(places::meet))
                .isPresent();
    return holds
        ? Optional.empty()
        : Optional.of(new Miss(turn, name, Miss.Cause.NO_ROOM_FOR_CLAMPS, "", 0));
  }

  private boolean hasNoSlot() {
    return machine.slots().count() == 0
        || machine.slots().width().isKnown() && prepared.threads().isEmpty();
  }

  private boolean needsBlank() {
    return machine.slots().width().isBlank()
        || !machine.slots().placesKnown()
        || machine.slots().pitch().isOpen() && machine.slots().needsPitch();
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
