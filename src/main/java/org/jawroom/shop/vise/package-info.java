/**
 * A vise as measured: base, jaws, screw, handle, further parts, and the mounts that hold it.
 *
 * <p>Lengths are half-nanometres in the vise frame. A vise of shape parts has no simple body; its
 * parts are all that it has, besides the bolts.
 */
package org.jawroom.shop.vise;
