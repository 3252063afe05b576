package org.jawroom.reference.solve;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.model.RefLevel;
import org.jawroom.reference.model.RefMargin;
import org.jawroom.reference.model.RefModel;
import org.jawroom.reference.model.RefPart;
import org.jawroom.reference.solve.ReferenceOutcome.Bounds;
import org.jawroom.reference.solve.ReferenceOutcome.Place;
import org.jawroom.reference.solve.ReferenceOutcome.Usable;
import org.jawroom.reference.space.Ratio;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** The entry point of the reference. */
public final class ReferencePairing {
  private static final long PRINTED = Length.MM / 100;
  private static final int TRIED = 16;

  private ReferencePairing() {}

  /** Solves a pairing as the model defines it. */
  public static ReferenceOutcome solve(Settings settings, Machine machine, Vise vise) {
    RefModel model = RefModel.at(RefLevel.WORST, withoutHandRoom(settings), machine, vise, false);
    Verdict verdict = verdict(model, settings);
    boolean open = !model.missing.isEmpty();
    if (open && (verdict == Verdict.NO_MOUNT || verdict == Verdict.NO_PLACE)) {
      return open(
          model, RefModel.at(RefLevel.BEST, model.settings, machine, vise, false), settings);
    }
    if (verdict == Verdict.NO_MOUNT) {
      return bare(model, model, verdict);
    }
    RefModel judged = verdict == Verdict.FITS ? model.with(settings, false) : model;
    Span whole = judged.wholeOpening();
    Optional<Usable> usable =
        switch (verdict) {
          case FITS, AWKWARD ->
              Optional.of(new Usable(Ratio.of(whole.lo()), Ratio.of(whole.hi()), whole));
          case MEASURE, LIMITED -> widest(judged).map(range -> usable(judged, range));
          default -> Optional.empty();
        };
    Span openings = verdict == Verdict.LIMITED ? usable.get().printed() : whole;
    long best = new RefChoice(judged, whole).bestMargin();
    Place place =
        new RefDetails(judged, openings, new RefChoice(judged, openings).recommended()).place();
    return new ReferenceOutcome(
        verdict,
        best == RefMargin.NO_LIMIT ? OptionalLong.empty() : OptionalLong.of(best),
        Optional.of(place),
        usable,
        caveats(judged, place),
        room(model),
        load(model),
        toolTooShort(model),
        open
            ? bounds(model, RefModel.at(RefLevel.BEST, model.settings, machine, vise, false))
            : Bounds.NONE,
        List.of());
  }

  /** What no value of the open readings lets fit, or nobody knows. */
  private static ReferenceOutcome open(RefModel worst, RefModel best, Settings settings) {
    Verdict verdict = verdict(best, settings);
    if (verdict == Verdict.NO_MOUNT || verdict == Verdict.NO_PLACE) {
      return bare(worst, best, verdict);
    }
    return new ReferenceOutcome(
        Verdict.UNKNOWN,
        OptionalLong.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        OptionalLong.empty(),
        Optional.empty(),
        false,
        bounds(worst, best),
        List.copyOf(worst.missing));
  }

  private static Bounds bounds(RefModel worst, RefModel best) {
    return worst.missing.isEmpty() ? Bounds.NONE : new Bounds(margin(worst), margin(best));
  }

  private static OptionalLong margin(RefModel model) {
    long margin = new RefChoice(model, model.wholeOpening()).bestMargin();
    return RefMargin.isFinite(margin) ? OptionalLong.of(margin) : OptionalLong.empty();
  }

  /** A hand room of 0 asks for no more than the clearance. */
  public static Settings withoutHandRoom(Settings settings) {
    return settings.toBuilder().handRoom(0).build();
  }

  /**
   * Whether nothing is blank and the vise, on a riser plate of that height, is clear somewhere at
   * every opening, with the hand room of {@code settings}.
   */
  public static boolean fitsOnRiser(Settings settings, Machine machine, Vise vise, long height) {
    RefModel model = RefModel.onRiser(settings, machine, vise, height);
    return model.missing.isEmpty() && isClear(model);
  }

  /** The same without hand room. */
  public static boolean isClearOnRiser(Settings settings, Machine machine, Vise vise, long height) {
    return fitsOnRiser(withoutHandRoom(settings), machine, vise, height);
  }

  /**
   * Whether the vise is clear somewhere at every opening, with the hand room of {@code settings},
   * its open readings taken one way.
   */
  public static boolean fits(RefLevel level, Settings settings, Machine machine, Vise vise) {
    RefModel model = RefModel.at(level, settings, machine, vise, false);
    return !model.regions.isEmpty() && isClear(model);
  }

  /**
   * The verdict on a model at worst or at best.
   *
   * @param model without hand room
   * @param settings with hand room
   */
  private static Verdict verdict(RefModel model, Settings settings) {
    if (model.regions.isEmpty()) {
      return Verdict.NO_MOUNT;
    }
    if (isClear(model)) {
      boolean handRoom = isClear(model.with(settings, false));
      return handRoom ? Verdict.FITS : Verdict.AWKWARD;
    }
    if (isClear(model.with(model.settings, true))) {
      return Verdict.MEASURE;
    }
    boolean limited = widest(model).isPresent() || somewhereClearWithoutWhatIsNotShared(model);
    return limited ? Verdict.LIMITED : Verdict.NO_PLACE;
  }

  /**
   * Whether an opening range of the least width that counts is clear at best, since the values of a
   * part's open readings share nothing over so short a range, though they do over a wider one.
   * Tried at both ends, just inside them, and at places evenly between.
   */
  private static boolean somewhereClearWithoutWhatIsNotShared(RefModel model) {
    long min = model.vise.opening().lo();
    long last = model.vise.opening().hi() - model.settings.leastOpening();
    if (!model.hasPartlyEmptyPart() || last < min) {
      return false;
    }
    return LongStream.concat(
            LongStream.of(min, Math.min(min + 1, last), Math.max(min, last - 1), last),
            LongStream.range(1, TRIED).map(i -> min + (last - min) / TRIED * i))
        .mapToObj(from -> new Span(from, from + model.settings.leastOpening()))
        .anyMatch(openings -> new RefChoice(model, openings).somewhereClear());
  }

  private static boolean isClear(RefModel model) {
    return new RefChoice(model, model.wholeOpening()).somewhereClear();
  }

  /** The widest range at least {@code least_opening} wide, over settable placements if possible. */
  private static Optional<RefOpening.Range> widest(RefModel model) {
    Ratio least = Ratio.of(model.settings.leastOpening());
    return Stream.of(true, false)
        .map(settable -> new RefOpening(model, settable).widest())
        .filter(range -> range != null && range.width().compareTo(least) >= 0)
        .findFirst();
  }

  private static List<Caveat> caveats(RefModel model, Place place) {
    Set<Caveat> caveats = EnumSet.noneOf(Caveat.class);
    if (place.margin().isPresent() && place.margin().getAsLong() < 0) {
      return List.of();
    }
    if (place.margin().isEmpty()) {
      caveats.add(Caveat.NOTHING_LISTED);
    }
    boolean heads = model.guards.stream().anyMatch(guard -> guard.rising() != null);
    if (heads && model.settings.shortestTool().isEmpty()) {
      caveats.add(Caveat.HEADS_LEFT_OUT);
    }
    RefPart base = model.base();
    boolean endless = base != null && place.overhang().isEmpty();
    // Every value counts, also those that leave the base its least length.
    long length =
        RefLevel.values(model.vise.base().rearReach(), 0).lo()
            + RefLevel.values(model.vise.base().frontReach(), 0).lo();
    if (endless || base != null && 4 * place.overhang().getAsLong() > length) {
      caveats.add(Caveat.OVERHANG);
    }
    if (!place.settable()) {
      caveats.add(Caveat.NOT_SETTABLE);
    }
    return List.copyOf(caveats);
  }

  static Usable usable(RefModel model, RefOpening.Range widest) {
    Span whole = model.wholeOpening();
    long from = whole.lo();
    long to = whole.hi();
    if (widest.from().compareTo(Ratio.of(from)) != 0) {
      from = -Math.floorDiv(-widest.from().ceil(), PRINTED) * PRINTED;
    }
    if (widest.to().compareTo(Ratio.of(to)) != 0) {
      to = Math.floorDiv(widest.to().floor(), PRINTED) * PRINTED;
    }
    return new Usable(widest.from(), widest.to(), new Span(from, to));
  }

  private static ReferenceOutcome bare(RefModel model, RefModel best, Verdict verdict) {
    return new ReferenceOutcome(
        verdict,
        OptionalLong.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        room(model),
        load(model),
        toolTooShort(model),
        bounds(model, best),
        List.of());
  }

  private static OptionalLong room(RefModel model) {
    if (model.machine.noseMax().isBlank()) {
      return OptionalLong.empty();
    }
    long jaw = Math.max(model.vise.jaws().height(), model.vise.jaws().platesHeight());
    long nose = RefLevel.values(model.machine.noseMax(), 0).lo();
    return OptionalLong.of(nose - model.vise.base().bedHeight() - jaw);
  }

  private static boolean toolTooShort(RefModel model) {
    OptionalLong tool = model.settings.shortestTool();
    if (tool.isEmpty() || model.machine.noseMax().isBlank()) {
      return false;
    }
    long nose = RefLevel.values(model.machine.noseMax(), 0).lo();
    return nose - model.vise.base().bedHeight() < tool.getAsLong();
  }

  private static Optional<java.math.BigDecimal> load(RefModel model) {
    return model.machine.maxLoad().flatMap(most -> model.vise.mass().map(most::subtract));
  }
}
