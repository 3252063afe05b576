package org.jawroom.placement.bolting;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.guard.MachineGuards;
import org.jawroom.clearance.obstacle.SweptGuards;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.slot.Slotted;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.standards.TNut;

/** The data shared by all pairings of one machine under one setup, computed once. */
public final class PreparedMachine {

  /** How many threads smaller than the slot's own a mount may take. */
  private static final int SMALLER_THREADS = 2;

  private final Settings settings;
  private final Machine machine;
  private final Setup setup;
  private final List<Long> threads;
  private final Rectangle reach;
  private final EnumSet<Orientation> turns = EnumSet.noneOf(Orientation.class);
  private final Slotted slotted;
  private final Guards anyBed;
  private final Certainty certainty;
  private final PreparedMachine atBest;

  private PreparedMachine(Settings settings, Machine machine, Setup setup, Certainty certainty) {
    this.certainty = certainty;
    this.settings = settings;
    this.machine = machine;
    this.setup = setup;
    Dimension width = machine.slots().width();
    this.threads =
        width.isKnown()
            ? TNut.boltsFor(width.length(), settings.smallerThreads() ? SMALLER_THREADS : 0)
            : List.of();
    this.reach =
        new Rectangle(
            Interval.around(machine.spindleX(), machine.reachX()),
            Interval.around(machine.spindleY(), machine.reachY()));
    this.turns.addAll(machine.turns());
    this.slotted = Slotted.of(machine, certainty);
    Guards lowest = guardsOver(0);
    this.anyBed =
        settings.shortestTool().isPresent() && !lowest.all().withNose().isEmpty() ? null : lowest;
    boolean isOpen =
        !lowest.blanks().isEmpty()
            || width.isOpen()
            || machine.slots().needsPitch() && machine.slots().pitch().isOpen();
    if (certainty == Certainty.AT_BEST) {
      this.atBest = this;
    } else if (isOpen) {
      this.atBest = new PreparedMachine(settings, machine, setup, Certainty.AT_BEST);
    } else {
      this.atBest = new PreparedMachine(this, anyBed);
    }
  }

  /** A machine without open readings at best: the same but for the vises that stand on it. */
  private PreparedMachine(PreparedMachine same, Guards anyBed) {
    this.certainty = Certainty.AT_BEST;
    this.settings = same.settings;
    this.machine = same.machine;
    this.setup = same.setup;
    this.threads = same.threads;
    this.reach = same.reach;
    this.turns.addAll(same.turns);
    this.slotted = same.slotted;
    this.anyBed = anyBed;
    this.atBest = this;
  }

  public static PreparedMachine of(Settings settings, Machine machine, Setup setup) {
    return new PreparedMachine(settings, machine, setup, Certainty.AT_WORST);
  }

  /** How open readings are taken. */
  public Certainty certainty() {
    return certainty;
  }

  /** The same machine with open readings at best. */
  public PreparedMachine atBest() {
    return atBest;
  }

  /**
   * The swept guards.
   *
   * @param all as listed
   * @param sorted in the layout for evaluation, without hand room
   * @param withHandRoom the same, with hand room round a handle while loading
   * @param handAsksMore whether hand room asks for more than the clearance of some guard
   * @param blanks the blank columns they need
   */
  public record Guards(
      MachineGuards all,
      SweptGuards sorted,
      SweptGuards withHandRoom,
      boolean handAsksMore,
      Blanks blanks) {}

  /** The guards for a vise with its bed at that height, riser included. */
  public Guards guards(long bedHeight) {
    return anyBed == null ? guardsOver(bedHeight) : anyBed;
  }

  private Guards guardsOver(long bedHeight) {
    Blanks blanks = new Blanks();
    MachineGuards all = MachineGuards.of(settings, machine, setup, bedHeight, certainty, blanks);
    return new Guards(
        all,
        SweptGuards.of(all.swept(), 0),
        SweptGuards.of(all.swept(), settings.handRoom()),
        all.swept().stream().anyMatch(guard -> guard.clearance() < settings.handRoom()),
        blanks);
  }

  public Settings settings() {
    return settings;
  }

  public Machine machine() {
    return machine;
  }

  public Setup setup() {
    return setup;
  }

  /**
   * The diameter of the bolts that pass a hole: that of the bolt that goes with the slots, or the
   * next smaller one that may be tried. Empty if none passes, or if the slots' width is blank or
   * too small for any bolt.
   */
  OptionalLong threadFor(long narrowestHole) {
    for (int i = 0; i < threads.size(); i++) {
      if (threads.get(i) <= narrowestHole) {
        return OptionalLong.of(threads.get(i));
      }
    }
    return OptionalLong.empty();
  }

  /** The diameters of the bolts that may hold on this machine. */
  public List<Long> threads() {
    return threads;
  }

  /** Whether the handle may point that way. */
  boolean allows(Orientation turn) {
    return turns.contains(turn);
  }

  /** The reach of the spindle over the table, a closed rectangle. */
  public Rectangle reach() {
    return reach;
  }

  /** The slots. */
  public Slotted slotted() {
    return slotted;
  }
}
