package org.jawroom.placement.pairing;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.OpenReading;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Column;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Vise;

/**
 * The complete result for one pairing; every report reads this and computes nothing.
 *
 * @param bestMargin the maximum over all turns, mounts and positions, over the full opening range,
 *     with hand room for {@code fits} alone; empty if nothing listed can be hit, for {@code no
 *     mount} and {@code unknown}, and for a pairing that is hopeless whatever its blanks are
 * @param recommended empty for {@code no mount}, for {@code unknown} and for such a hopeless
 *     pairing
 * @param usableOpening for {@code fits} and {@code awkward} the full range, for {@code limited},
 *     and for {@code measure} if there is one, the widest usable part with its ends rounded inward
 *     to 0.01 mm; else empty
 * @param caveats why the recommended placement, if its margin is ≥ 0, is not shown as plain; {@link
 *     Caveat#IN_DOUBT} whatever the verdict
 * @param roomOverJaws from the jaw tops up to the nose at its highest, negative if the jaws do not
 *     pass under it; empty for {@code unknown} or if a blank leaves it open
 * @param loadLeft load capacity left with the vise on the table, kg; negative if it is too heavy;
 *     empty likewise
 * @param shortestToolTooShort whether the shortest tool does not clear the vise's bed even with the
 *     nose at its highest, where the nose is then taken to stand
 * @param bounds between which margins it lies, if it needs an open reading
 * @param open the columns of the open readings it needs, without duplicates, in table order; every
 *     verdict but {@code unknown} holds for all their values
 * @param inDoubt the readings that it needs and that checks on the machine say may be wrong
 * @param checked who checked it on the machine at the recommended place, and when
 */
public record Outcome(
    Machine machine,
    Vise vise,
    Verdict verdict,
    OptionalLong bestMargin,
    Optional<Recommendation> recommended,
    Optional<Interval> usableOpening,
    List<Caveat> caveats,
    OptionalLong roomOverJaws,
    Optional<BigDecimal> loadLeft,
    boolean shortestToolTooShort,
    MarginBounds bounds,
    List<Column> open,
    List<Measurand> inDoubt,
    Optional<String> checked) {

  public Outcome {
    inDoubt = List.copyOf(inDoubt);
    caveats = List.copyOf(caveats);
    open = List.copyOf(open);
  }

  /**
   * The same pairing standing elsewhere.
   *
   * @param place over the openings of {@code verdict}
   * @param usable likewise, see {@link #usableOpening}
   */
  public Outcome at(
      Verdict there,
      Recommendation place,
      Optional<Interval> usable,
      List<Caveat> mind,
      Optional<String> checkedThere) {
    return new Outcome(
        machine,
        vise,
        there,
        bestMargin,
        Optional.of(place),
        usable,
        mind,
        roomOverJaws,
        loadLeft,
        shortestToolTooShort,
        bounds,
        open,
        inDoubt,
        checkedThere);
  }

  /** What keeps it {@code unknown}: the columns of its open readings; else none. */
  public List<Column> missing() {
    return verdict == Verdict.UNKNOWN ? open : List.of();
  }

  /** The open readings that it needs, in table order. */
  public List<OpenReading> openReadings() {
    return OpenReading.of(machine, vise, open);
  }

  /**
   * The margin of the recommended placement, the one that people see everywhere; empty without one
   * and if nothing listed can be hit.
   */
  public OptionalLong margin() {
    return recommended().map(Recommendation::margin).orElse(OptionalLong.empty());
  }

  /** Whether it fits and nothing needs to be said beside that. */
  public boolean isPlainFit() {
    return verdict == Verdict.FITS && caveats.isEmpty();
  }
}
