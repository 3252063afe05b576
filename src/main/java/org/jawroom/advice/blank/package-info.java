/**
 * The limits of open readings: the value from which on, or up to which, a pairing fits with every
 * other open reading at its best.
 *
 * <p>Limits are whole multiples of 0.01 mm, rounded toward less clearance.
 */
package org.jawroom.advice.blank;
