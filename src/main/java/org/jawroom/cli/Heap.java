package org.jawroom.cli;

/**
 * The memory of this Java, in bytes.
 *
 * @param used by what is there already
 * @param most it may take together
 */
record Heap(long used, long most) {

  /** As it is now. What nobody needs any more counts as used only while that changes nothing. */
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
