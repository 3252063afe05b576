/**
 * A picture as a file: SVG, PNG or PDF with embedded fonts; the same picture gives the same bytes.
 */
package org.jawroom.drawing.file;
