/**
 * The verdict on one machine and one vise.
 *
 * <p><b>In:</b> settings, a machine and a vise. <b>Out:</b> an {@link
 * org.jawroom.placement.pairing.Outcome}. The one entry is {@link
 * org.jawroom.placement.pairing.Pairing#solve}; {@link org.jawroom.placement.pairing.Model} answers
 * further questions about the same pairing.
 */
package org.jawroom.placement.pairing;
