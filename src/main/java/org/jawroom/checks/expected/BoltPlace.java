package org.jawroom.checks.expected;

import org.jawroom.shop.value.Dimension;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Bolt;
import org.jawroom.shop.vise.Mount;

/**
 * One bolt of a mount.
 *
 * @param index of the bolt in its mount, from 0
 * @param thread the bolt's diameter, half-nanometres
 */
record BoltPlace(Mount mount, int index, long thread) {

  /** An end of the room that the bolt may take along u. */
  LinearForm alongU(Terms terms, String vise, boolean high) {
    LinearForm middle = terms.position(measurand(vise, "bolt_u", "u"), bolt().u());
    return end(
        middle, terms.reading(measurand(vise, "bolt_hole_u", "hole_u"), bolt().holeU()), high);
  }

  /** The same along v. */
  LinearForm alongV(Terms terms, String vise, boolean high) {
    LinearForm hole = terms.reading(measurand(vise, "bolt_hole_v", "hole_v"), bolt().holeV());
    if (!mount.own()) {
      return end(terms.position(measurand(vise, "", "v"), bolt().v()), hole, high);
    }
    // The first of the row's own pair stands at -v.
    Dimension v = mount.bolts().get(1).v();
    Dimension spacing =
        v.isBlank() ? v : Dimension.within(2 * v.values(0).lo(), 2 * v.values(0).hi());
    LinearForm half = terms.reading(measurand(vise, "bolt_spacing", "v"), spacing).half();
    return end(index == 0 ? half.negated() : half, hole, high);
  }

  private LinearForm end(LinearForm middle, LinearForm hole, boolean high) {
    LinearForm half = hole.plus(LinearForm.constant(thread)).half();
    return high ? middle.plus(half) : middle.minus(half);
  }

  private Bolt bolt() {
    return mount.bolts().get(index);
  }

  private Measurand measurand(String vise, String own, String row) {
    return mount.own()
        ? new Measurand("vises", vise, "", own)
        : new Measurand("mounts", vise, mount.name() + " " + (index + 1), row);
  }
}
