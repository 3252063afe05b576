/**
 * What a command refuses before it starts: results too large for the memory or the disk ({@link
 * org.jawroom.cli.refusal.Foreseen}), and places where it may not write ({@link
 * org.jawroom.cli.refusal.Output}).
 */
package org.jawroom.cli.refusal;
