package org.jawroom.reference.random;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.fixture.MachineDraft;
import org.jawroom.fixture.ViseDraft;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.vise.Vise;

/**
 * Seeded random shops of one machine and one vise: the same profile and seed give the same shop.
 */
public final class RandomShops {

  /** Properties that a shop is generated with. */
  enum Feature {
    CLUTTER,
    COARSE,
    FEW_GUARDS,
    INCH,
    KEYED,
    SLOTS_ALONG_Y,
    OTHER_MOVES,
    LOAD_GIVEN,
    BOTH_JAWS,
    SHAPE_PARTS,
    EXTRA_MOUNTS,
    BLANKS,
    TOLERANCES,
    SHORTEST_TOOL,
    MAX_OVERHANG,
    SQUEEZED,
    SIXTEEN_BOXES,
    FIXED_TABLE,
    ONE_OPENING,
    HANDLED,
    OWN_CLEARANCES,
    SYMMETRIC,
    TOUCHING,
    TINY,
    HUGE,
    STRAPPED,
    SMALL_HOLES,
    SHORT_SLOTS,
    LOW_HANDLE
  }

  /** The profiles of generated shops. */
  public enum Profile {
    PLAIN(),
    SQUEEZED(Feature.SQUEEZED),
    FEW_GUARDS(Feature.FEW_GUARDS),
    CLUTTERED(Feature.CLUTTER, Feature.FEW_GUARDS),
    INCH(Feature.INCH, Feature.SQUEEZED),
    COARSE(Feature.COARSE, Feature.FEW_GUARDS),
    COARSE_PARTS(Feature.COARSE, Feature.SHAPE_PARTS, Feature.FEW_GUARDS),
    KEYED(Feature.KEYED),
    SLOTS_ALONG_Y(Feature.SLOTS_ALONG_Y, Feature.FEW_GUARDS),
    OTHER_MOVES(Feature.OTHER_MOVES, Feature.FEW_GUARDS),
    LOAD_GIVEN(Feature.LOAD_GIVEN, Feature.FEW_GUARDS),
    BOTH_JAWS(Feature.BOTH_JAWS, Feature.SQUEEZED),
    SHAPE_PARTS(Feature.SHAPE_PARTS, Feature.FEW_GUARDS),
    EXTRA_MOUNTS(Feature.EXTRA_MOUNTS, Feature.KEYED),
    BLANKS(Feature.BLANKS, Feature.SQUEEZED, Feature.FEW_GUARDS),
    BLANKS_OF_ALL_KINDS(
        Feature.BLANKS,
        Feature.FEW_GUARDS,
        Feature.EXTRA_MOUNTS,
        Feature.MAX_OVERHANG,
        Feature.SHORTEST_TOOL),
    BLANKS_WITHOUT_TOOL(Feature.BLANKS, Feature.FEW_GUARDS),
    TOLERANCES(Feature.TOLERANCES, Feature.SQUEEZED),
    SHORTEST_TOOL(Feature.SHORTEST_TOOL, Feature.FEW_GUARDS),
    MAX_OVERHANG(Feature.MAX_OVERHANG),
    /** Any combination of features. */
    ANYTHING(),
    SIXTEEN_BOXES(Feature.SIXTEEN_BOXES),
    SIXTEEN_BOXES_TIES(Feature.SIXTEEN_BOXES, Feature.COARSE, Feature.EXTRA_MOUNTS),
    SIXTEEN_BOXES_KEYED_Y(Feature.SIXTEEN_BOXES, Feature.KEYED, Feature.SLOTS_ALONG_Y),
    SIXTEEN_BOXES_FIXED_INCH(Feature.SIXTEEN_BOXES, Feature.FIXED_TABLE, Feature.INCH),
    SIXTEEN_BOXES_TOUCHING(Feature.SIXTEEN_BOXES, Feature.TOUCHING),
    FIXED_TABLE(Feature.FIXED_TABLE, Feature.FEW_GUARDS, Feature.SHORTEST_TOOL),
    FIXED_TABLE_INCH_Y(Feature.FIXED_TABLE, Feature.INCH, Feature.SLOTS_ALONG_Y, Feature.SQUEEZED),
    KEYED_INCH_Y(Feature.KEYED, Feature.INCH, Feature.SLOTS_ALONG_Y, Feature.FEW_GUARDS),
    ONE_OPENING(Feature.ONE_OPENING, Feature.FEW_GUARDS, Feature.SQUEEZED),
    HANDLED(
        Feature.HANDLED,
        Feature.OWN_CLEARANCES,
        Feature.TOLERANCES,
        Feature.FEW_GUARDS,
        Feature.SQUEEZED),
    BOTH_JAWS_HANDLED(Feature.BOTH_JAWS, Feature.HANDLED, Feature.LOAD_GIVEN, Feature.FEW_GUARDS),
    SYMMETRIC(Feature.SYMMETRIC, Feature.FEW_GUARDS),
    SYMMETRIC_COARSE(Feature.SYMMETRIC, Feature.COARSE, Feature.FEW_GUARDS, Feature.EXTRA_MOUNTS),
    TOUCHING(Feature.TOUCHING, Feature.FEW_GUARDS),
    TOUCHING_SQUEEZED(Feature.TOUCHING, Feature.SQUEEZED, Feature.TOLERANCES),
    TOUCHING_SYMMETRIC(Feature.TOUCHING, Feature.SYMMETRIC, Feature.COARSE, Feature.FEW_GUARDS),
    TINY(Feature.TINY, Feature.FEW_GUARDS),
    TINY_BOXES(Feature.TINY, Feature.SIXTEEN_BOXES),
    TINY_SQUEEZED(Feature.TINY, Feature.SQUEEZED, Feature.SHAPE_PARTS),
    HUGE(Feature.HUGE, Feature.FEW_GUARDS),
    HUGE_SQUEEZED(Feature.HUGE, Feature.SQUEEZED),
    STRAPPED(Feature.STRAPPED, Feature.FEW_GUARDS),
    STRAPPED_SQUEEZED(Feature.STRAPPED, Feature.SQUEEZED, Feature.KEYED),
    STRAPPED_COARSE(Feature.STRAPPED, Feature.COARSE, Feature.SLOTS_ALONG_Y, Feature.FEW_GUARDS),
    STRAPPED_SHORT_SLOTS(Feature.STRAPPED, Feature.SHORT_SLOTS, Feature.MAX_OVERHANG),
    STRAPPED_BLANKS(Feature.STRAPPED, Feature.BLANKS, Feature.FEW_GUARDS),
    STRAPPED_SYMMETRIC(Feature.STRAPPED, Feature.SYMMETRIC, Feature.COARSE, Feature.FEW_GUARDS),
    HUGE_STRAPPED(Feature.HUGE, Feature.STRAPPED, Feature.SMALL_HOLES, Feature.FEW_GUARDS),
    SMALL_HOLES(Feature.SMALL_HOLES, Feature.EXTRA_MOUNTS, Feature.FEW_GUARDS),
    SMALL_HOLES_KEYED(Feature.SMALL_HOLES, Feature.KEYED, Feature.SQUEEZED, Feature.COARSE),
    SMALL_HOLES_BLANKS(Feature.SMALL_HOLES, Feature.BLANKS, Feature.EXTRA_MOUNTS),
    SHORT_SLOTS(Feature.SHORT_SLOTS, Feature.KEYED, Feature.FEW_GUARDS),
    SHORT_SLOTS_COARSE(Feature.SHORT_SLOTS, Feature.COARSE, Feature.FEW_GUARDS),
    LOW_HANDLE(Feature.LOW_HANDLE, Feature.HANDLED, Feature.FEW_GUARDS),
    LOW_HANDLE_STRAPPED(
        Feature.LOW_HANDLE,
        Feature.HANDLED,
        Feature.STRAPPED,
        Feature.SQUEEZED,
        Feature.TOLERANCES);

    private final Set<Feature> features = EnumSet.noneOf(Feature.class);

    Profile(Feature... features) {
      this.features.addAll(List.of(features));
    }

    /** Whether a shop has so many guards that solving takes several times as long. */
    public boolean isCrowded() {
      return features.contains(Feature.CLUTTER) || features.contains(Feature.SIXTEEN_BOXES);
    }

    /** Whether its sizes are refused by the reader although the solvers accept them. */
    public boolean isOfImpossibleSize() {
      return features.contains(Feature.TINY) || features.contains(Feature.HUGE);
    }

    boolean isInch() {
      return features.contains(Feature.INCH);
    }
  }

  private RandomShops() {}

  public static Shop shop(Profile profile, long seed) {
    return shop(profile, seed, 1);
  }

  /**
   * A shop of {@code each} machines and as many vises, the first vise generated for the first
   * machine and so on, to be solved in all pairings.
   */
  public static Shop shop(Profile profile, long seed, int each) {
    Set<Feature> features = features(profile, seed);
    Dice dice = dice(features, seed * 1_000_003 + profile.ordinal());
    // Apart from the other dice, so that shops without these features stay as they are.
    Dice mounting = dice(features, seed * 998_244_353 + profile.ordinal());
    Settings settings = RandomMounting.settings(mounting, features, settings(dice, features));
    List<Machine> machines = new ArrayList<>();
    List<Vise> vises = new ArrayList<>();
    for (int i = 0; i < each; i++) {
      MachineDraft mill = RandomMachines.draft(dice, features);
      ViseDraft vise = RandomVises.draft(dice, features, mill);
      RandomMounting.change(mounting, features, mill, vise);
      if (features.contains(Feature.SYMMETRIC)) {
        RandomSymmetry.mirror(dice, mill, vise);
      }
      if (features.contains(Feature.SQUEEZED)) {
        squeeze(dice, settings, mill, vise, features.contains(Feature.TOLERANCES) ? 0 : -40);
      }
      if (features.contains(Feature.BLANKS)) {
        RandomBlanks.strike(dice, mill, vise);
      }
      if (i > 0) {
        mill.name += " " + (i + 1);
        vise.name += " " + (i + 1);
      }
      machines.add(mill.build());
      vises.add(vise.build());
    }
    if (features.contains(Feature.TOUCHING)) {
      settings = RandomTouch.touching(dice, settings, machines.get(0), vises.get(0));
    }
    return new Shop(settings, machines, vises, List.of());
  }

  private static Set<Feature> features(Profile profile, long seed) {
    Dice first = new Dice(seed * 31 + profile.ordinal(), false);
    Set<Feature> features = EnumSet.noneOf(Feature.class);
    features.addAll(profile.features);
    if (profile == Profile.ANYTHING) {
      for (Feature feature : Feature.values()) {
        if (first.chance(percent(feature))) {
          features.add(feature);
        }
      }
    }
    return features;
  }

  /** The percentage of {@code ANYTHING} shops with a feature. */
  private static int percent(Feature feature) {
    return switch (feature) {
      case CLUTTER, SIXTEEN_BOXES, TINY, HUGE -> 5;
      case FIXED_TABLE, ONE_OPENING, SYMMETRIC, TOUCHING -> 10;
      default -> 30;
    };
  }

  private static Dice dice(Set<Feature> features, long seed) {
    if (features.contains(Feature.HUGE)) {
      return new Dice(seed, Dice.NANOMETRES, Dice.HUGE);
    }
    if (features.contains(Feature.TINY)) {
      return new Dice(seed, Dice.WHOLE_MILLIMETRES, Dice.TINY);
    }
    return features.contains(Feature.COARSE)
        ? new Dice(seed, Dice.COARSE)
        : new Dice(seed, features.contains(Feature.INCH));
  }

  /** The only machine of a random shop. */
  public static Machine machine(Shop shop) {
    return shop.machines().get(0);
  }

  /** The only vise of a random shop. */
  public static Vise vise(Shop shop) {
    return shop.vises().get(0);
  }

  /**
   * Makes the distance from door to rear cover about the size of the vise, so that small amounts
   * decide.
   */
  private static void squeeze(
      Dice dice, Settings settings, MachineDraft mill, ViseDraft vise, long least) {
    if (!vise.simple) {
      return;
    }
    long moving = vise.openingMax / (vise.both ? 2 : 1) + vise.movingJaw.length();
    long front = vise.frontReach.length();
    if (vise.frontOpen.isKnown()) {
      front += Math.max(vise.frontOpen.length(), vise.frontClosed.length());
    }
    long rear = vise.rearReach.length();
    if (vise.rearClosed.isKnown()) {
      rear += vise.rearClosed.length();
    }
    long length = Math.max(front, moving) + (vise.both ? Math.max(rear, moving) : rear);
    long off = dice.mm(least, least == 0 ? 6 : 20) * dice.among(List.of(0, 1, 1));
    long room = length + 2 * settings.clearance() + off;
    long frontGap = dice.mm(-10, 40);
    mill.frontGap = Dimension.of(frontGap);
    mill.rearGap = Dimension.of(room - mill.tableWidth - frontGap);
    if (dice.chance(60)) {
      vise.turns =
          dice.chance(50)
              ? EnumSet.of(Orientation.FRONT)
              : EnumSet.of(Orientation.FRONT, Orientation.REAR);
    } else {
      long half = dice.mm(-40, 30);
      mill.leftGap = Dimension.of(half);
      mill.rightGap = Dimension.of(room + dice.mm(-20, 60) - mill.tableLength - half);
    }
  }

  private static Settings settings(Dice dice, Set<Feature> features) {
    Settings d = Settings.DEFAULTS;
    boolean inches = features.contains(Feature.INCH);
    long clearance = inches ? Length.INCH / 4 : dice.among(List.of(6L, 5L, 10L, 0L)) * Length.MM;
    if (features.contains(Feature.TOUCHING)) {
      clearance += 20 * Length.MM;
    }
    boolean tiny = features.contains(Feature.TINY);
    if (tiny) {
      clearance = dice.pick(3) * Length.MM;
    }
    return d.toBuilder()
        .clearance(clearance)
        .handRoom(dice.among(tiny ? List.of(0L, 3L) : List.of(25L, 25L, 30L, 0L)) * Length.MM)
        .spacing(clearance)
        .shortestTool(
            features.contains(Feature.SHORTEST_TOOL)
                ? OptionalLong.of(dice.mm(0, 200))
                : OptionalLong.empty())
        .leastOpening(dice.among(tiny ? List.of(1L, 6L) : List.of(25L, 25L, 10L, 60L)) * Length.MM)
        .maxOverhang(
            features.contains(Feature.MAX_OVERHANG)
                ? OptionalLong.of(dice.mm(0, 80))
                : OptionalLong.empty())
        .build();
  }
}
