/**
 * The production solver compared with the second one, on seeded random shops, to the
 * half-nanometre. A failure prints the shop as CSV to paste into a folder.
 */
package org.jawroom.reference.agree;
