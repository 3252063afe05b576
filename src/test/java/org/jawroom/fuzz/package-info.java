/**
 * Readers fed with anything: Jazzer makes the inputs, and {@code mvn test} reads only those kept.
 *
 * <p>Each test has its inputs in a folder of resources, {@code CLASSInputs/METHOD}, one file an
 * input. Whatever makes a test fail is written there too, and stays as a case.
 */
package org.jawroom.fuzz;
