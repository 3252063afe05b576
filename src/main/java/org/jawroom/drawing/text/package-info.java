/**
 * Letters on a picture: the built-in typeface, the machine's fonts for what it lacks, the runs of a
 * text in several scripts, and lines fitted to a width. In points.
 */
package org.jawroom.drawing.text;
