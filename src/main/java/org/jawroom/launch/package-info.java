/**
 * How the program starts: the choice between one Java and a second, quicker one, the class-data
 * archive, and the standard streams.
 *
 * <p>{@link org.jawroom.launch.Start} is the entry of the JAR. Small work and large matrices run in
 * a child JVM; if that cannot start, the parent sees it from the exit status and runs the command
 * itself. If the parent ends, so does the child, and publishes nothing.
 */
package org.jawroom.launch;
