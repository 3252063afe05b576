package org.jawroom.reference.random;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.jawroom.geometry.Length;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.machine.Side;
import org.jawroom.shop.machine.Slots;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Base;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Handle;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Projection;
import org.jawroom.shop.vise.Screw;
import org.jawroom.shop.vise.Vise;

/** Opens a few readings of a machine and a vise, as if they were known within bounds only. */
public final class RandomRanges {

  /** The forms of a reading within bounds. */
  public enum Form {
    TWO_SIDED,
    AT_MOST,
    AT_LEAST,
    BLANK,
    /** Both ends alike: known after all. */
    ZERO_WIDE,
    ONE_NANOMETRE,
    /** As wide as the margin of the closed pairing, so that an end is just where that is 0. */
    TOUCHING
  }

  private final SplittableRandom random;
  private final long margin;
  private final Set<Integer> chosen = new HashSet<>();
  private final Set<Form> forms = EnumSet.noneOf(Form.class);
  private int next;

  private RandomRanges(long seed, long margin) {
    this.random = new SplittableRandom(seed);
    this.margin = margin / 2 * 2;
  }

  /** A pairing with open readings, and the forms that these have. */
  public record Opened(Machine machine, Vise vise, Set<Form> forms) {}

  /**
   * Opens one to four readings.
   *
   * @param margin of the pairing as it is, half-nanometres
   */
  public static Opened open(Machine machine, Vise vise, long seed, long margin) {
    RandomRanges ranges = new RandomRanges(seed, margin);
    ranges.machine(machine);
    ranges.vise(vise);
    int readings = ranges.next;
    int count = 1 + ranges.random.nextInt(4);
    for (int i = 0; i < count; i++) {
      ranges.chosen.add(ranges.random.nextInt(readings));
    }
    ranges.next = 0;
    return new Opened(ranges.machine(machine), ranges.vise(vise), ranges.forms);
  }

  /** The reading, opened if it is one of those chosen. */
  private Dimension length(Dimension known, boolean signed) {
    return known.isKnown() && chosen.contains(next++) ? range(known.length(), signed) : known;
  }

  private Dimension length(Dimension known) {
    return length(known, false);
  }

  private Dimension range(long value, boolean signed) {
    Form form = Form.values()[random.nextInt(Form.values().length)];
    forms.add(form);
    long unit = random.nextBoolean() ? Length.MM : 2 * Length.NANOMETRE;
    long below = unit * random.nextInt(20);
    long above = unit * random.nextInt(20);
    return switch (form) {
      case TWO_SIDED -> within(value - below, value + above, signed);
      case AT_MOST -> within(-Length.ENDLESS, value + above, signed);
      case AT_LEAST -> Dimension.within(least(value - below, value, signed), Length.ENDLESS);
      case BLANK -> Dimension.BLANK;
      case ZERO_WIDE -> Dimension.within(value, value);
      case ONE_NANOMETRE ->
          random.nextBoolean()
              ? within(value - Length.NANOMETRE, value, signed)
              : within(value, value + Length.NANOMETRE, signed);
      case TOUCHING ->
          within(
              value - (random.nextBoolean() ? Math.abs(margin) : 0),
              value + (random.nextBoolean() ? Math.abs(margin) : 0),
              signed);
    };
  }

  private static Dimension within(long lo, long hi, boolean signed) {
    return Dimension.within(least(lo, hi, signed), hi);
  }

  /** A length that is no gap has no value below 0, unless it is written with one. */
  private static long least(long lo, long value, boolean signed) {
    return signed ? lo : Math.min(value, Math.max(0, lo));
  }

  private Machine machine(Machine old) {
    Slots slots = old.slots();
    Dimension width = slots.width();
    if (width.isKnown() && chosen.contains(next++)) {
      forms.add(Form.BLANK);
      width = Dimension.BLANK;
    }
    Dimension pitch = length(slots.pitch());
    Dimension noseMin = length(old.noseMin());
    Dimension noseMax = length(old.noseMax());
    Machine opened =
        old.withEachGuard(guard -> guard.isRow() ? taped(guard) : guard).toBuilder()
            .nose(noseMin, noseMax)
            .slots(
                new Slots(
                    slots.direction(),
                    slots.count(),
                    width,
                    pitch,
                    slots.first(),
                    slots.positions(),
                    slots.length()))
            .build();
    for (Side side : Side.values()) {
      if (!old.gap(side).isNone()) {
        opened = opened.withGap(side, length(old.gap(side), true));
      }
    }
    return opened;
  }

  private Guard taped(Guard guard) {
    return guard.side().isPresent() ? guard.withGap(length(guard.gap(), true)) : guard;
  }

  private Vise vise(Vise old) {
    Base base = old.base();
    Jaws jaws = old.jaws();
    Screw screw = old.screw();
    Handle handle = old.handle();
    List<Mount> mounts = new ArrayList<>();
    old.mounts().forEach(mount -> mounts.add(mount.own() ? own(mount) : others(mount)));
    return old.toBuilder()
        .base(
            new Base(
                base.bedHeight(),
                length(base.width()),
                length(base.rearReach()),
                length(base.frontReach())))
        .jaws(jaws.withThickness(length(jaws.fixedThickness()), length(jaws.movingThickness())))
        .screw(
            new Screw(
                projection(screw.rear()),
                projection(screw.front()),
                length(screw.height()),
                length(screw.diameter())))
        .handle(
            new Handle(
                length(handle.radius()),
                length(handle.depth()),
                handle.onWhileCutting(),
                handle.fullSwing()))
        .mounts(mounts)
        .build();
  }

  private Projection projection(Projection old) {
    return new Projection(length(old.closed()), length(old.open()));
  }

  private Mount own(Mount old) {
    Bolt bolt = old.bolts().get(1);
    Dimension spacing =
        Optional.of(bolt.v())
            .filter(Dimension::isKnown)
            .map(half -> length(Dimension.of(2 * half.length())))
            .orElse(bolt.v());
    return Mount.baseBolts(
        length(bolt.u(), true), spacing, length(bolt.holeU()), length(bolt.holeV()));
  }

  private Mount others(Mount old) {
    return new Mount(
        old.name(),
        false,
        old.bolts().stream()
            .map(bolt -> new Bolt(bolt.u(), bolt.v(), length(bolt.holeU()), length(bolt.holeV())))
            .toList());
  }
}
