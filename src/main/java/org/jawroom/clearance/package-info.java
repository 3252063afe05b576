/**
 * The clearance model: guards and parts, their sweeps over travel and opening, and the gaps between
 * them at a placement.
 *
 * <p><b>Table frame.</b> Origin at the centre of the table top; +X right as the operator sees it,
 * +Y away from the operator, +Z up. Guards are given in it with every axis at mid-travel. <b>Vise
 * frame.</b> Origin on the underside, in the fixed jaw's face (both jaws moving: the plane midway),
 * at the middle of the jaw width; +u toward the handle, +w up, v = w × u. A placement is a turn and
 * the position (x, y) of the vise frame's origin; w = 0 lies on the table top.
 *
 * <p><b>Gap</b> of a part's swept box P and a guard's swept box G in one situation: the maximum
 * over x, y, z of max(G.lo − P.hi, P.lo − G.hi). <b>Margin</b> = gap − required clearance − both
 * tolerances. All boxes are closed: touching with no clearance required counts as clear. All
 * rounding is toward less clearance.
 *
 * <p>This package does not depend on the search or on files.
 */
package org.jawroom.clearance;
