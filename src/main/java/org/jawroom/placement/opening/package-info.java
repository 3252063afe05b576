/**
 * The widest usable opening range. Its ends lie where linear bounds intersect; they stay exact
 * fractions until printed, rounded inward.
 */
package org.jawroom.placement.opening;
