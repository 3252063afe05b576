package org.jawroom.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.PartRole;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.geometry.Ends;
import org.jawroom.geometry.Orientation;
import org.jawroom.geometry.Rectangle;
import org.jawroom.geometry.TurnedRectangle;
import org.jawroom.placement.bolting.Fastening;
import org.jawroom.placement.bolting.Footprint;
import org.jawroom.placement.search.Bolted;
import org.jawroom.report.page.PageValues.Facts;
import org.jawroom.report.wording.PairingWords;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;

/** The page's data of one vise. */
final class ViseData {
  private ViseData() {}

  /**
   * @param pairings of the vise; if one of them is drawn, its open readings are taken at worst
   */
  static Map<String, Object> of(Vise vise, List<PagePairing> pairings) {
    Facts facts =
        new Facts()
            .named(vise.name())
            .with("about", vise.description())
            .with("facts", PageValues.inBoth(words -> words.facts(vise)))
            .with("cautions", PairingWords.cautions(vise));
    Map<Long, Map<Integer, Object>> fastened = new TreeMap<>();
    for (PagePairing pairing : pairings) {
      for (PagePairing.Fastened one : pairing.fastened()) {
        fastened
            .computeIfAbsent(one.thread(), any -> new TreeMap<>())
            .put(one.mount(), one.parts());
      }
    }
    if (!fastened.isEmpty()) {
      boolean base = vise.simple() && vise.base().width().isKnown();
      facts
          .with("opening", PageValues.ends(vise.opening()))
          .with("bed", vise.base().bedHeight())
          .with("top", vise.top())
          .with("both", vise.jaws().both())
          .with("work", work(vise))
          .with("base", base ? vise.base().width().length() : null)
          .with("turned", vise.isTurned())
          .with("mounts", mounts(vise))
          .withAll(parts(vise))
          .with("bolts", fastened)
          .with("open", OpenData.readings(pairings, reading -> !reading.isOfMachine()));
    }
    return facts.map();
  }

  /** The parts at worst, bolts excluded, and the outlines of those that are turned. */
  static Map<String, Object> parts(Vise vise) {
    List<Part> parts = ViseParts.of(vise, Certainty.AT_WORST, new Blanks());
    List<TurnedRectangle> outlines =
        parts.stream().flatMap(part -> part.outline().stream()).distinct().toList();
    return new Facts()
        .with("outlines", outlines.stream().map(ViseData::corners).toList())
        .with("parts", parts(vise, parts, outlines))
        .map();
  }

  private static List<String> mounts(Vise vise) {
    Stream<String> clamps = vise.hasClampMount() ? Stream.of(Fastening.CLAMPS) : Stream.empty();
    return Stream.concat(vise.mounts().stream().map(Mount::name), clamps).toList();
  }

  /** The bolts or clamps of one mount. */
  static PagePairing.Fastened fastened(Vise vise, Bolted seat) {
    List<Part> parts =
        seat.parts().stream()
            .filter(part -> part.role() == PartRole.BOLT || part.role() == PartRole.CLAMP)
            .toList();
    return new PagePairing.Fastened(
        PairingData.thread(seat), seat.fastening().index(), parts(vise, parts, List.of()));
  }

  /** The parts by rank; a part that is the same for cutting and loading appears once. */
  private static List<Object> parts(Vise vise, List<Part> parts, List<TurnedRectangle> outlines) {
    List<Object> data = new ArrayList<>();
    for (Part part : parts) {
      Part other =
          in(part.situation() == Situation.CUTTING ? Situation.LOADING : Situation.CUTTING, part);
      // Equal boxes may depend on different readings.
      boolean both =
          parts.contains(other) && OpenData.moves(vise, part).equals(OpenData.moves(vise, other));
      if (part.situation() == Situation.CUTTING) {
        data.add(part(vise, part, both ? 3 : 1, outlines));
      } else if (!both) {
        data.add(part(vise, part, 2, outlines));
      }
    }
    return data;
  }

  private static Part in(Situation situation, Part part) {
    return new Part(
        part.role(),
        part.row(),
        part.rank(),
        situation,
        part.u(),
        part.v(),
        part.w(),
        part.tolerance(),
        part.outline());
  }

  /** What lies between the jaws wide open: [u from, u to, v from, v to]. */
  private static List<Long> work(Vise vise) {
    // Handle to the right, u is x and v is y.
    Rectangle work = Footprint.workArea(vise, Orientation.RIGHT);
    return List.of(work.x().lo(), work.x().hi(), work.y().lo(), work.y().hi());
  }

  /** Its corners in order, [u, v] each. */
  private static List<List<Long>> corners(TurnedRectangle outline) {
    return outline.corners().stream().map(corner -> List.of(corner.u(), corner.v())).toList();
  }

  /**
   * {@code u} is [lo, hi, lo, hi]: jaws closed, then open; {@code when} as for a guard; {@code
   * strip} which of the outlines a strip helps to cover, from 0.
   */
  private static Map<String, Object> part(
      Vise vise, Part part, int when, List<TurnedRectangle> outlines) {
    Ends closed = part.u().closed();
    Ends open = part.u().open();
    return new Facts()
        .named(part.name())
        .with("when", when)
        .with("handle", part.handle())
        .with("u", List.of(closed.lo(), closed.hi(), open.lo(), open.hi()))
        .with("v", PageValues.ends(part.v()))
        .with("w", PageValues.ends(part.w()))
        .with("tolerance", part.tolerance())
        .with("moves", OpenData.moves(vise, part))
        .with("strip", part.outline().map(outlines::indexOf).orElse(null))
        .map();
  }
}
