/** A pairing as a drawing: the words for it, and SVG, PDF or PNG files. */
package org.jawroom.report.picture;
