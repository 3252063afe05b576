/**
 * Seeded random shops of many kinds ({@link org.jawroom.reference.random.RandomShops}), with
 * readings blanked or known within bounds.
 */
package org.jawroom.reference.random;
