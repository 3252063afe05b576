/**
 * What a machine adds to a shop before it is bought: which vises fit it, what to ask the seller,
 * and how large a vise it has room for.
 */
package org.jawroom.advice.assess;
