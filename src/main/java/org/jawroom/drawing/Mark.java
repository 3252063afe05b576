package org.jawroom.drawing;

import org.jawroom.drawing.View.Flat;

/**
 * One rectangle of a view.
 *
 * @param id what it is, in letters and numbers of our own: it names the group in an SVG
 * @param name what people call it; empty where that need not be written
 */
record Mark(String id, String name, Ink ink, Flat flat) {}
