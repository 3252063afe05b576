/** The blocks of which a card's pages are laid out: prose, grids, frames, pictures. In points. */
package org.jawroom.report.card.block;
