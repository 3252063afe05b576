/**
 * The widest usable range of openings: its ends are where linear bounds meet, kept as exact
 * fractions until they are printed, drawn in.
 */
package org.jawroom.placement.opening;
