package org.jawroom.report.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.advice.Advice;
import org.jawroom.advice.blank.BlankLimit;
import org.jawroom.advice.blank.Relation;
import org.jawroom.placement.pairing.Verdict;

/**
 * A blank and the unknown pairings that depend on it.
 *
 * @param alone the pairings in which nothing else is blank, so that this value settles them
 */
public record ToMeasure(BlankCell blank, List<Advice> pairings, List<Advice> alone) {

  private static final Comparator<ToMeasure> FIRST_THINGS_FIRST =
      Comparator.comparingInt((ToMeasure one) -> -one.alone.size())
          .thenComparingInt(one -> -one.pairings.size())
          .thenComparingInt(one -> one.blank.table())
          .thenComparingInt(one -> one.blank.row())
          .thenComparing(one -> one.blank.column());

  private ToMeasure(BlankCell blank) {
    this(blank, new ArrayList<>(), new ArrayList<>());
  }

  /**
   * Lists all blanks to measure: first by the number of pairings they settle, then by the number
   * they occur in, then in the order of the tables.
   *
   * @param advice machines then vises
   * @param across the number of vises
   */
  public static List<ToMeasure> of(List<Advice> advice, int across) {
    Map<BlankCell, ToMeasure> all = new LinkedHashMap<>();
    for (int index = 0; index < advice.size(); index++) {
      Advice pairing = advice.get(index);
      if (pairing.outcome().verdict() == Verdict.UNKNOWN) {
        List<BlankCell> blanks = BlankCell.of(pairing.outcome(), index / across, index % across);
        for (BlankCell blank : blanks) {
          ToMeasure one = all.computeIfAbsent(blank, ToMeasure::new);
          one.pairings.add(pairing);
          if (blanks.size() == 1) {
            one.alone.add(pairing);
          }
        }
      }
    }
    return all.values().stream().sorted(FIRST_THINGS_FIRST).toList();
  }

  /** The limits of this blank in its pairings that have that relation. */
  List<BlankLimit> limits(Relation relation) {
    return pairings.stream()
        .flatMap(pairing -> pairing.limits().stream())
        .filter(limit -> limit.reading().equals(blank.reading()))
        .filter(limit -> limit.relation() == relation)
        .toList();
  }
}
