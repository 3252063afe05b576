package org.jawroom.placement.bolting;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.clearance.part.BoltParts;
import org.jawroom.clearance.part.ClampParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.slot.Anchors;
import org.jawroom.shop.Settings;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/** The data shared by all pairings of one vise on one riser height, computed once. */
public final class PreparedVise {
  private final Certainty certainty;
  private final PreparedVise atBest;
  private final Vise vise;
  private final long riser;
  private final long clampRoom;
  private final Blanks blanks = new Blanks();
  private final SweptParts body;
  private final boolean hasHandle;
  private final List<Long> threads;
  private final SweptParts clamped;
  private final List<SweptParts[]> bolted = new ArrayList<>();
  private final List<Anchors[]> anchors = new ArrayList<>();
  private final boolean[] blankMounts;
  private final boolean[] openMounts;
  private final long[] narrowestHoles;
  private final EnumSet<Orientation> turns = EnumSet.noneOf(Orientation.class);
  private final Rectangle[] workAreas;
  private final List<Optional<Rectangle>> bases = new ArrayList<>();

  private PreparedVise(
      Vise vise, long riser, long clampRoom, Collection<Long> threads, Certainty certainty) {
    this.certainty = certainty;
    this.vise = vise;
    this.riser = riser;
    this.clampRoom = clampRoom;
    this.body = SweptParts.of(raised(ViseParts.of(vise, certainty, blanks)), vise.opening());
    this.hasHandle =
        body.parts().stream()
            .anyMatch(part -> part.handle() && part.situation() == Situation.LOADING);
    this.threads = List.copyOf(threads);
    this.blankMounts = new boolean[vise.mounts().size()];
    this.openMounts = new boolean[blankMounts.length];
    this.narrowestHoles = new long[blankMounts.length];
    for (int i = 0; i < blankMounts.length; i++) {
      blankMounts[i] = vise.mounts().get(i).hasBlank();
      openMounts[i] = vise.mounts().get(i).isOpen();
      narrowestHoles[i] = narrowestHole(vise.mounts().get(i), certainty);
    }
    for (long thread : threads) {
      bolted.add(
          IntStream.range(0, blankMounts.length)
              .mapToObj(
                  i ->
                      blankMounts[i] || narrowestHoles[i] < thread
                          ? body
                          : withBolts(vise.mounts().get(i), thread))
              .toArray(SweptParts[]::new));
      anchors.add(
          IntStream.range(0, blankMounts.length)
              .mapToObj(
                  i ->
                      narrowestHoles[i] < thread
                          ? null
                          : Anchors.ofBolts(vise.mounts().get(i), thread, certainty))
              .toArray(Anchors[]::new));
    }
    this.clamped =
        vise.hasClampMount() && Footprint.baseAlongU(vise).isPresent()
            ? body.with(raised(ClampParts.of(vise, clampRoom, certainty)))
            : body;
    this.turns.addAll(vise.turns());
    this.workAreas = new Rectangle[Orientation.ALL.size()];
    for (Orientation turn : Orientation.ALL) {
      workAreas[turn.ordinal()] = Footprint.workArea(vise, turn);
      bases.add(Footprint.base(vise, turn));
    }
    boolean isOpen = !blanks.isEmpty() || vise.mounts().stream().anyMatch(Mount::isOpen);
    this.atBest =
        isOpen && certainty == Certainty.AT_WORST
            ? new PreparedVise(vise, riser, clampRoom, threads, Certainty.AT_BEST)
            : this;
  }

  /**
   * Prepares a vise.
   *
   * @param riser height of the riser plate under it, half-nanometres; 0: none
   * @param threads diameters of the bolts that may hold it
   */
  public static PreparedVise of(
      Settings settings, Vise vise, long riser, Collection<Long> threads) {
    return new PreparedVise(vise, riser, settings.clampRoom(), threads, Certainty.AT_WORST);
  }

  /** The vise as it stands on a machine. */
  public static PreparedVise on(PreparedMachine machine, Vise vise) {
    return of(machine.settings(), vise, machine.setup().riser(), machine.threads());
  }

  public Vise vise() {
    return vise;
  }

  /** How open readings are taken. */
  Certainty certainty() {
    return certainty;
  }

  /** The same vise with its open readings at best; itself if it has none. */
  public PreparedVise atBest() {
    return atBest;
  }

  /** The same turned vise with its jaws kept to some openings; see {@link Vise#within}. */
  public PreparedVise within(Interval openings) {
    return new PreparedVise(vise.within(openings), riser, clampRoom, threads, certainty);
  }

  /** Height of the bed above the table, riser included. */
  public long bedHeight() {
    return vise.base().bedHeight() + riser;
  }

  /** The blank columns that its parts need. */
  public Blanks blanks() {
    return blanks;
  }

  /** Whether a hand works a handle of it while loading. */
  public boolean hasHandle() {
    return hasHandle;
  }

  /** Its parts over the full opening range, without bolts. */
  public SweptParts body() {
    return body;
  }

  /**
   * {@link #body} plus the bolts of a mount without blanks.
   *
   * @param thread one of the diameters it was prepared for
   * @throws IllegalArgumentException for any other diameter
   */
  SweptParts bolted(int mountIndex, long thread) {
    return bolted.get(indexOf(thread))[mountIndex];
  }

  /**
   * The bolts of a mount, as places of its anchors.
   *
   * @param thread one of the diameters it was prepared for, no wider than any hole of the mount
   */
  Anchors anchors(int mountIndex, long thread) {
    return anchors.get(indexOf(thread))[mountIndex];
  }

  private int indexOf(long thread) {
    for (int i = 0; i < threads.size(); i++) {
      if (threads.get(i) == thread) {
        return i;
      }
    }
    throw new IllegalArgumentException("not prepared for thread " + thread);
  }

  /** {@link #body} plus strap clamps on either side of the base, which must be known. */
  SweptParts clamped() {
    return clamped;
  }

  /** Whether the position or the size of one of the mount's holes is open. */
  boolean isOpen(int mountIndex) {
    return openMounts[mountIndex];
  }

  /**
   * The least width of any hole of a mount, at best the greatest that its readings allow; {@link
   * Length#ENDLESS} if no hole is known.
   */
  long narrowestHole(int mountIndex) {
    return narrowestHoles[mountIndex];
  }

  /** Whether the vise allows that turn. */
  boolean allows(Orientation turn) {
    return turns.contains(turn);
  }

  public Rectangle workArea(Orientation turn) {
    return workAreas[turn.ordinal()];
  }

  /** The base as far as any value of its readings takes it; see {@link Footprint#base}. */
  public Optional<Rectangle> base(Orientation turn) {
    return bases.get(turn.ordinal());
  }

  private SweptParts withBolts(Mount mount, long thread) {
    // At best the bolts take the thread that the smallest hole passes, if that passes any.
    long drawn =
        certainty == Certainty.AT_BEST
            ? threads.stream()
                .filter(one -> one <= Math.min(thread, narrowestHole(mount, Certainty.AT_WORST)))
                .max(Long::compare)
                .orElse(Math.min(thread, threads.stream().min(Long::compare).orElse(thread)))
            : thread;
    return body.with(raised(BoltParts.of(vise, mount, drawn, certainty)));
  }

  private List<Part> raised(List<Part> parts) {
    return riser == 0 ? parts : parts.stream().map(part -> part.raised(riser)).toList();
  }

  private static long narrowestHole(Mount mount, Certainty certainty) {
    long least = Length.ENDLESS;
    for (Bolt bolt : mount.bolts()) {
      for (Dimension hole : List.of(bolt.holeU(), bolt.holeV())) {
        Interval sizes = hole.values(0);
        least = Math.min(least, certainty == Certainty.AT_WORST ? sizes.lo() : sizes.hi());
      }
    }
    return least;
  }
}
