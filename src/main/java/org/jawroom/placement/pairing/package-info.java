/**
 * The verdict on one machine and one vise.
 *
 * <p><b>In:</b> settings, a machine and a vise. <b>Out:</b> an {@link
 * org.jawroom.placement.pairing.Outcome}. The entry point is {@link
 * org.jawroom.placement.pairing.Pairing#solve}; {@link org.jawroom.placement.pairing.Model} answers
 * further queries about the same pairing.
 */
package org.jawroom.placement.pairing;
