package org.jawroom.drawing.view;

import org.jawroom.drawing.view.View.Flat;

/**
 * One rectangle of a view.
 *
 * @param id an identifier of our own letters and digits: it names the group in an SVG
 * @param name the label; empty if none is drawn
 */
public record Mark(String id, String name, Ink ink, Flat flat) {}
