/**
 * The single changes that make a failing pairing fit, by section 8 of the model, each by the least
 * amount.
 *
 * <p>Amounts are whole multiples of 0.01 mm: applied to the inputs, each serves, and 0.01 mm less
 * does not.
 */
package org.jawroom.advice.remedy;
