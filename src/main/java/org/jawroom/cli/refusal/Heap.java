package org.jawroom.cli.refusal;

/**
 * The heap of this JVM, in bytes.
 *
 * @param used by live objects
 * @param most the maximum size
 */
record Heap(long used, long most) {

  /**
   * The current state. Collects garbage first if {@code wanted} bytes are not free, so that dead
   * objects do not count as used.
   */
  static Heap now(long wanted) {
    Heap heap = measured();
    if (heap.left() < wanted) {
      System.gc();
      heap = measured();
    }
    return heap;
  }

  private static Heap measured() {
    Runtime java = Runtime.getRuntime();
    return new Heap(java.totalMemory() - java.freeMemory(), java.maxMemory());
  }

  long left() {
    return Math.max(0, most - used);
  }
}
