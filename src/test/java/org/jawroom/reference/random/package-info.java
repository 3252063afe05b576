/**
 * Seeded random shops of many kinds ({@link org.jawroom.reference.random.RandomShops}), with
 * readings blanked or known within bounds, and shops as text to paste ({@link
 * org.jawroom.reference.random.ShopCsv}).
 */
package org.jawroom.reference.random;
