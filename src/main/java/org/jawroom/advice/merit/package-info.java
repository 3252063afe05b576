/**
 * The order among pairings by section 12 of the model: which vise suits a machine best, and which
 * machine a vise.
 */
package org.jawroom.advice.merit;
