package org.jawroom.placement.bolting;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.MachineGuards;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.SweptGuards;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.shop.Dimension;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.standards.TNut;

/** What the pairings of one machine under one setup have in common, worked out once. */
public final class PreparedMachine {
  private final Settings settings;
  private final Machine machine;
  private final Setup setup;
  private final OptionalLong thread;
  private final Rectangle reach;
  private final EnumSet<Orientation> turns = EnumSet.noneOf(Orientation.class);
  private final Slotted slotted;
  private final Guards anyBed;

  private PreparedMachine(Settings settings, Machine machine, Setup setup) {
    this.settings = settings;
    this.machine = machine;
    this.setup = setup;
    Dimension width = machine.slots().width();
    this.thread = width.isKnown() ? TNut.boltFor(width.length()) : OptionalLong.empty();
    this.reach =
        new Rectangle(
            Interval.around(machine.spindleX(), machine.reachX()),
            Interval.around(machine.spindleY(), machine.reachY()));
    this.turns.addAll(machine.turns());
    this.slotted = machine.slots().placesKnown() ? Slotted.of(machine) : null;
    Guards lowest = guardsOver(0);
    this.anyBed =
        settings.shortestTool().isPresent() && !lowest.all().withNose().isEmpty() ? null : lowest;
  }

  public static PreparedMachine of(Settings settings, Machine machine, Setup setup) {
    return new PreparedMachine(settings, machine, setup);
  }

  /** What the guards sweep, as listed and as sorted; {@code blanks} they need. */
  public record Guards(MachineGuards all, SweptGuards sorted, Blanks blanks) {}

  /** Those that a vise with its bed so high, riser and all, meets. */
  public Guards guards(long bedHeight) {
    return anyBed == null ? guardsOver(bedHeight) : anyBed;
  }

  private Guards guardsOver(long bedHeight) {
    Blanks blanks = new Blanks();
    MachineGuards all = MachineGuards.of(settings, machine, setup, bedHeight, blanks);
    return new Guards(all, SweptGuards.of(all.swept(), settings.handRoom()), blanks);
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

  /** The bolt that goes with the slots; empty where their width is blank or too small for any. */
  OptionalLong thread() {
    return thread;
  }

  /** The same as a list. */
  public List<Long> threads() {
    return thread.isPresent() ? List.of(thread.getAsLong()) : List.of();
  }

  /** Whether a handle may point so. */
  boolean allows(Orientation turn) {
    return turns.contains(turn);
  }

  /** Of the spindle over the table. */
  public Rectangle reach() {
    return reach;
  }

  /** The slots; not to be asked where a blank pitch leaves their places open. */
  public Slotted slotted() {
    return slotted;
  }
}
