package org.jawroom.reference;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import org.jawroom.geometry.Length;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.reference.ReferenceOutcome.Place;
import org.jawroom.reference.ReferenceOutcome.Usable;
import org.jawroom.shop.Settings;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/** The entry point of the reference. */
public final class ReferencePairing {
  private static final long PRINTED = Length.MM / 100;

  private ReferencePairing() {}

  /** Solves a pairing as the model defines it. */
  public static ReferenceOutcome solve(Settings settings, Machine machine, Vise vise) {
    RefModel model = new RefModel(withoutHandRoom(settings), machine, vise, false);
    Verdict verdict = verdict(model, settings);
    boolean hopeless = verdict == Verdict.NO_MOUNT || verdict == Verdict.NO_PLACE;
    if (!model.missing.isEmpty() && !hopeless) {
      return new ReferenceOutcome(
          Verdict.UNKNOWN,
          OptionalLong.empty(),
          Optional.empty(),
          Optional.empty(),
          List.of(),
          OptionalLong.empty(),
          Optional.empty(),
          false,
          List.copyOf(model.missing));
    }
    if (!model.missing.isEmpty() || verdict == Verdict.NO_MOUNT) {
      return bare(model, verdict);
    }
    RefModel judged =
        verdict == Verdict.FITS ? new RefModel(settings, machine, vise, false) : model;
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
        List.of());
  }

  /** A hand room of 0 asks for no more than the clearance. */
  static Settings withoutHandRoom(Settings settings) {
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
   * The verdict with every blank relaxed.
   *
   * @param model without hand room
   * @param settings with hand room
   */
  private static Verdict verdict(RefModel model, Settings settings) {
    if (model.regions.isEmpty()) {
      return Verdict.NO_MOUNT;
    }
    if (isClear(model)) {
      boolean handRoom = isClear(new RefModel(settings, model.machine, model.vise, false));
      return handRoom ? Verdict.FITS : Verdict.AWKWARD;
    }
    if (isClear(new RefModel(model.settings, model.machine, model.vise, true))) {
      return Verdict.MEASURE;
    }
    return widest(model).isPresent() ? Verdict.LIMITED : Verdict.NO_PLACE;
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
    if (base != null && 4 * place.overhang().getAsLong() > base.hiClosed() - base.loClosed()) {
      caveats.add(Caveat.OVERHANG);
    }
    if (!place.settable()) {
      caveats.add(Caveat.NOT_SETTABLE);
    }
    return List.copyOf(caveats);
  }

  private static Usable usable(RefModel model, RefOpening.Range widest) {
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

  private static ReferenceOutcome bare(RefModel model, Verdict verdict) {
    return new ReferenceOutcome(
        verdict,
        OptionalLong.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        room(model),
        load(model),
        toolTooShort(model),
        List.of());
  }

  private static OptionalLong room(RefModel model) {
    if (!model.machine.noseMax().isKnown()) {
      return OptionalLong.empty();
    }
    long jaw = Math.max(model.vise.jaws().height(), model.vise.jaws().platesHeight());
    return OptionalLong.of(model.machine.noseMax().length() - model.vise.base().bedHeight() - jaw);
  }

  private static boolean toolTooShort(RefModel model) {
    OptionalLong tool = model.settings.shortestTool();
    if (tool.isEmpty() || !model.machine.noseMax().isKnown()) {
      return false;
    }
    long overBed = model.machine.noseMax().length() - model.vise.base().bedHeight();
    return overBed < tool.getAsLong();
  }

  private static Optional<java.math.BigDecimal> load(RefModel model) {
    return model.machine.maxLoad().flatMap(most -> model.vise.mass().map(most::subtract));
  }
}
