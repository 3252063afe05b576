/**
 * The model: which guards and parts there are, what they sweep over travel and opening, and how far
 * apart they are at a placement.
 *
 * <p><b>Table frame.</b> Origin at the centre of the table top; +X right as the operator sees it,
 * +Y away from the operator, +Z up. Guards are told in it with every axis at mid-travel. <b>Vise
 * frame.</b> Origin on the underside, in the fixed jaw's face (both jaws moving: the plane midway),
 * at the middle of the jaw width; +u toward the handle, +w up, v = w × u. A placement is a turn and
 * the place (x, y) of the vise frame's origin; w = 0 lies on the table top.
 *
 * <p><b>Gap</b> of a part's swept box P and a guard's swept box G in one situation: the largest
 * over x, y, z of max(G.lo − P.hi, P.lo − G.hi). <b>Margin</b> = gap − required clearance − both
 * tolerances. Touching with nothing required counts as clear. Every rounding is toward less.
 *
 * <p>This package knows nothing of searching and nothing of files.
 */
package org.jawroom.clearance;
