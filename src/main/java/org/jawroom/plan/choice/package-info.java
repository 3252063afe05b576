/**
 * Choices of one kind of vise per machine, in whole numbers: what a choice is worth by each aim,
 * what it must satisfy, a first one to begin with, how the vises of a kind are set out and what
 * must be bought. Nothing here is a program of a solver; everything is recounted here, whatever a
 * solver claims.
 */
package org.jawroom.plan.choice;
