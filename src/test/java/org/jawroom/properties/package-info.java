/**
 * Properties that must hold of every shop, tried on seeded random ones: nothing gets better for
 * being made harder, mirror images have mirror-image answers, and one shop written in two ways has
 * one answer.
 *
 * <p>Unlike agreement with a second solver, these need no other opinion of what the answer is: they
 * follow from the model itself.
 *
 * <p>{@code -Dproperties.seeds=500} tries more shops, {@code -Dproperties.first=1000} others.
 */
package org.jawroom.properties;
