/**
 * What looks wrong in a shop that was read without a fault.
 *
 * <p>{@link org.jawroom.plausibility.Warnings#of} goes over machines, guards and vises, one subject
 * a class, and returns {@link org.jawroom.plausibility.Warning}s in a fixed order. Pure: it reads
 * the records of {@link org.jawroom.shop} and nothing else.
 *
 * <p><b>A warning is not a fault.</b> All that is warned of is accepted, since it can be true, and
 * no warning changes a verdict. Each says what looks wrong and what to do about it.
 */
package org.jawroom.plausibility;
