/**
 * A warning: table, row and column, what looks wrong and what to do about it, and how much it
 * matters. Equal warnings of several rows are merged and sorted for people. Does not know what is
 * warned of.
 */
package org.jawroom.plausibility.warning;
