package org.jawroom.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.jawroom.clearance.Setup;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.Pair;
import org.jawroom.clearance.guard.SweptGuard;
import org.jawroom.clearance.obstacle.SweptGuards;
import org.jawroom.clearance.obstacle.SweptParts;
import org.jawroom.clearance.part.Part;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.outcome.NamedPieces;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Box;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.IntervalSet;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.OpeningInterval;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.bolting.PreparedMachine;
import org.jawroom.placement.bolting.Region;
import org.jawroom.placement.search.Candidate;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Strips;
import org.jawroom.shop.Settings;

/**
 * Seeded random regions a few dozen half-nanometres wide, so that every lattice position can be
 * tried.
 */
public final class SmallWorlds {
  public static final int HALF = 12;

  private final Random random;
  private final boolean thin;

  public SmallWorlds(long seed) {
    this(seed, false);
  }

  private SmallWorlds(long seed, boolean thin) {
    this.random = new Random(seed);
    this.thin = thin;
  }

  /** About half of the parts and guards have no thickness, and most require no clearance. */
  public static SmallWorlds thin(long seed) {
    return new SmallWorlds(seed, true);
  }

  /** A region of one to three strips, one to three parts and up to four random guards. */
  public Region region(Orientation turn, int mountIndex, Interval openings) {
    List<Part> parts = new ArrayList<>();
    for (int i = random.nextInt(3) + 1; i > 0; i--) {
      Interval u = thick(8);
      Interval open =
          thin ? u : Interval.of(u.lo() + random.nextInt(4), u.hi() + 3 + random.nextInt(4));
      parts.add(
          NamedPieces.part(
              "part " + i,
              i,
              false,
              Situation.CUTTING,
              new OpeningInterval(u, open, openings),
              thick(8),
              thick(6),
              demand(2)));
    }
    List<SweptGuard> guards = new ArrayList<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      Box box = new Box(side(), side(), random.nextInt(4) == 0 ? Interval.ALL : thick(8));
      guards.add(
          NamedPieces.guard(
              "guard " + i, guards.size(), false, Situation.CUTTING, box, demand(3), demand(2)));
    }
    return new Region(
        turn,
        new Fastening(
            mountIndex, "mount " + mountIndex, false, OptionalLong.of(0), Optional.empty()),
        strips(random.nextInt(3) + 1),
        Region.EVERYWHERE,
        Region.EVERYWHERE,
        SweptParts.of(parts, openings),
        SweptGuards.of(guards, 0));
  }

  /** A candidate for which every place is settable. */
  public Candidate seat(Region region, Interval openings, Rectangle reach) {
    return seat(region, openings, reach, 0);
  }

  /** A candidate that asks for tap room beside everything it could hit. */
  public Candidate seat(Region region, Interval openings, Rectangle reach, long tap) {
    Interval u = Interval.of(0, 2 * random.nextInt(4));
    Interval v = Interval.around(0, random.nextInt(4));
    Rectangle workArea = new Rectangle(region.turn().x(u, v), region.turn().y(u, v));
    return Candidate.of(region, machine(reach, tap), openings, workArea);
  }

  /** A machine with that reach and tap room. */
  private static PreparedMachine machine(Rectangle reach, long tap) {
    MachineDraft draft = new MachineDraft();
    draft.spindleX = (reach.x().lo() + reach.x().hi()) / 2;
    draft.spindleY = (reach.y().lo() + reach.y().hi()) / 2;
    draft.travelX = reach.x().length();
    draft.travelY = reach.y().length();
    return PreparedMachine.of(Settings.builder().tapRoom(tap).build(), draft.build(), Setup.PLAIN);
  }

  /** Side by side, some a single line, with at least one lattice position between them. */
  private Strips strips(int count) {
    long[] q = new long[2 * count];
    long at = random.nextInt(HALF) - HALF;
    for (int i = 0; i < q.length; i += 2) {
      q[i] = at;
      q[i + 1] = at + random.nextInt(HALF / count);
      at = q[i + 1] + 1 + random.nextInt(4);
    }
    Interval p = interval(HALF);
    return Strips.of(random.nextBoolean() ? Axis.X : Axis.Y, p.lo(), p.hi(), IntervalSet.of(q));
  }

  public Rectangle reach() {
    return new Rectangle(
        Interval.around(random.nextInt(5) - 2, random.nextInt(8)),
        Interval.around(random.nextInt(5) - 2, random.nextInt(8)));
  }

  public Orientation turn() {
    return Orientation.values()[random.nextInt(4)];
  }

  public int below(int bound) {
    return random.nextInt(bound);
  }

  /** Occasionally unbounded on one side or on both. */
  private Interval side() {
    Interval interval = thick(HALF);
    return switch (random.nextInt(6)) {
      case 0 -> Interval.of(-Length.ENDLESS, interval.hi());
      case 1 -> Interval.of(interval.lo(), Length.ENDLESS);
      case 2 -> Interval.ALL;
      default -> interval;
    };
  }

  private Interval thick(int half) {
    Interval interval = interval(half);
    return thin && random.nextBoolean() ? Interval.of(interval.lo(), interval.lo()) : interval;
  }

  private long demand(int bound) {
    return thin && random.nextInt(4) > 0 ? 0 : random.nextInt(bound);
  }

  public Interval interval(int half) {
    int lo = random.nextInt(2 * half) - half;
    return Interval.of(lo, lo + random.nextInt(half));
  }

  /** Every lattice position of a region, strip by strip. */
  public static List<Place> placesOf(Region region) {
    List<Place> all = new ArrayList<>();
    for (Rectangle places : region.places().rectangles()) {
      for (long x = places.x().lo(); x <= places.x().hi(); x++) {
        for (long y = places.y().lo(); y <= places.y().hi(); y++) {
          all.add(new Place(x, y));
        }
      }
    }
    return all;
  }

  /** The margin at a position, pair by pair from the moved boxes. */
  public static long margin(Region region, Interval openings, Place place) {
    long least = Length.ENDLESS;
    for (Pair pair : region.pairs()) {
      Box part = pair.part().over(openings, region.turn()).at(place.x(), place.y());
      least = Math.min(least, part.gapTo(pair.guard().box()) - pair.required() - pair.tolerance());
    }
    return least;
  }
}
