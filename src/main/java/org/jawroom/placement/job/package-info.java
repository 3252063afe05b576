/**
 * Whether a vise on a machine holds a job, and what fails if it does not.
 *
 * <p>A job is the same model over fewer openings, with the workpiece as one more part. The height
 * of a tool above it is compared with the clearance of the settings alone. In a row of vises the
 * place is that of the row, and the other vises are {@link org.jawroom.placement.job.Beside
 * beside}.
 */
package org.jawroom.placement.job;
