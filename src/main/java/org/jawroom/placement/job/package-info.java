/**
 * Whether a vise on a machine holds a job, and what fails if it does not.
 *
 * <p>A job is the same model over fewer openings, with the work as one more part; the height of a
 * tool over it is held against the setting's clearance alone.
 */
package org.jawroom.placement.job;
