/**
 * What is asked of a plan and what is answered: the cell with its machines, kinds of vise, fits and
 * jobs, the wishes, and the plan with the stages in which it was found. Everything is referred to
 * by index. Depends on nothing else of the project.
 */
package org.jawroom.plan.model;
