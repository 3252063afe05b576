package org.jawroom.reference.random;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;

/** Blanks a few dimensions, as if they had not been measured. */
final class RandomBlanks {
  private final MachineDraft mill;
  private final ViseDraft vise;

  private RandomBlanks(MachineDraft mill, ViseDraft vise) {
    this.mill = mill;
    this.vise = vise;
  }

  static void strike(Dice dice, MachineDraft mill, ViseDraft vise) {
    RandomBlanks blanks = new RandomBlanks(mill, vise);
    List<Runnable> ways = blanks.ways(dice);
    int count = 1 + dice.pick(3);
    for (int i = 0; i < count; i++) {
      dice.among(ways).run();
    }
  }

  private List<Runnable> ways(Dice dice) {
    List<Runnable> ways = new ArrayList<>();
    ways.add(() -> mill.slotWidth = Dimension.BLANK);
    ways.add(() -> mill.slotPitch = Dimension.BLANK);
    ways.add(() -> mill.frontGap = Dimension.BLANK);
    ways.add(() -> mill.rearGap = Dimension.BLANK);
    ways.add(() -> mill.leftGap = Dimension.BLANK);
    ways.add(() -> mill.rightGap = Dimension.BLANK);
    ways.add(() -> mill.noseMin = Dimension.BLANK);
    ways.add(() -> mill.noseMin = Dimension.BLANK);
    ways.add(() -> mill.noseMin = Dimension.BLANK);
    ways.add(() -> mill.noseMax = Dimension.BLANK);
    ways.add(() -> mill.noseMax = Dimension.BLANK);
    ways.add(() -> mill.noseMax = Dimension.BLANK);
    ways.add(() -> mill.guards.replaceAll(guard -> dice.chance(60) ? untaped(guard) : guard));
    ways.add(() -> vise.baseWidth = Dimension.BLANK);
    ways.add(() -> vise.rearReach = Dimension.BLANK);
    ways.add(() -> vise.frontReach = Dimension.BLANK);
    ways.add(() -> vise.fixedJaw = Dimension.BLANK);
    ways.add(() -> vise.movingJaw = Dimension.BLANK);
    ways.add(() -> vise.rearClosed = Dimension.BLANK);
    ways.add(() -> vise.rearOpen = Dimension.BLANK);
    ways.add(() -> vise.frontClosed = Dimension.BLANK);
    ways.add(() -> vise.frontOpen = Dimension.BLANK);
    ways.add(() -> vise.screwHeight = Dimension.BLANK);
    ways.add(() -> vise.screwDiameter = Dimension.BLANK);
    ways.add(() -> vise.screwDiameter = Dimension.BLANK);
    ways.add(
        () -> {
          unscrewed();
          vise.screwDiameter = Dimension.BLANK;
        });
    ways.add(() -> vise.handleRadius = Dimension.BLANK);
    ways.add(() -> vise.handleDepth = Dimension.BLANK);
    ways.add(() -> vise.boltSpacing = Dimension.BLANK);
    ways.add(() -> vise.boltU = Dimension.BLANK);
    ways.add(() -> vise.holeU = Dimension.BLANK);
    ways.add(() -> vise.holeV = Dimension.BLANK);
    ways.add(() -> vise.mounts.replaceAll(RandomBlanks::undrilled));
    return ways;
  }

  /** Without a screw at either end, only the handle needs the diameter. */
  private void unscrewed() {
    vise.rearClosed = Dimension.NONE;
    vise.rearOpen = Dimension.NONE;
    vise.frontClosed = Dimension.NONE;
    vise.frontOpen = Dimension.NONE;
  }

  private static Guard untaped(Guard guard) {
    return guard.side().isEmpty()
        ? guard
        : new Guard(
            guard.name(),
            guard.kind(),
            guard.carriedBy(),
            guard.when(),
            guard.side(),
            Dimension.BLANK,
            guard.limits(),
            guard.clearance(),
            guard.tolerance());
  }

  private static Mount undrilled(Mount mount) {
    List<Bolt> bolts = new ArrayList<>(mount.bolts());
    Bolt first = bolts.get(0);
    bolts.set(0, new Bolt(first.u(), first.v(), Dimension.BLANK, first.holeV()));
    return new Mount(mount.name(), mount.own(), bolts);
  }
}
