/**
 * A pairing as the second solver sees it: parts of the vise, guards over the whole travel, and the
 * regions in which a mount holds. {@link org.jawroom.reference.model.RefModel} has all of them.
 */
package org.jawroom.reference.model;
