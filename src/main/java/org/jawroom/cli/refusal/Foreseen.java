package org.jawroom.cli.refusal;

import java.io.PrintWriter;
import java.util.Optional;
import org.jawroom.shop.Shop;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * The estimated size and memory of a result, before the work begins. The amounts for one pairing or
 * one drawing are measured (see "How large" in DEVELOPERS.md) and rounded up.
 *
 * @param what the result, as the subject of a sentence
 * @param pairings the number of pairings in it
 * @param bytes the size of the file; 0 if it stays small
 * @param heap the memory needed, in bytes
 */
public record Foreseen(String what, long pairings, long bytes, long heap) {

  private static final long MB = 1_000_000;
  private static final long GIB = 1L << 30;

  /** The memory for reading and writing in addition to the result. */
  private static final long BASE = 16 * MB;

  /** A page is one string before it is written, and a Java string is no longer. */
  static final long LONGEST_PAGE = GIB;

  private static final long HEAP_OF_PAGE_BYTE = 12;
  private static final long HEAP_OF_PLANNED_PAIRING = 4_000;
  private static final long HEAP_OF_PLANNED_JOB = 500;
  private static final long HEAP_OF_PLANNED_SET = 4_000;
  private static final long HEAP_OF_JOB_OF_SET = 1_000;
  private static final long BYTES_OF_DRAWING = 100_000;
  private static final long HEAP_OF_DRAWING = 400_000;

  /** A larger file takes noticeable time and may exceed the limit of a mail: worth a line. */
  private static final long LARGE_FILE = 5 * MB;

  private static final long MANY_PAIRINGS = 10_000;

  public Foreseen {
    if (bytes < 0 || heap < 0) {
      throw new IllegalArgumentException("negative size: " + bytes + " bytes, heap " + heap);
    }
  }

  /**
   * The page of a shop.
   *
   * @param bytes as {@link org.jawroom.report.page.PageFile#estimate} has it
   */
  public static Foreseen page(Shop shop, long bytes) {
    return new Foreseen("The page", pairings(shop), bytes, BASE + bytes * HEAP_OF_PAGE_BYTE);
  }

  /**
   * A plan.
   *
   * @param sets the most sets of several kinds that are tried
   */
  public static Foreseen plan(Shop shop, long sets) {
    int jobs = shop.jobs().size();
    long each = HEAP_OF_PLANNED_PAIRING + HEAP_OF_PLANNED_JOB * jobs;
    long eachSet = HEAP_OF_PLANNED_SET + HEAP_OF_JOB_OF_SET * jobs;
    return new Foreseen(
        "The plan", pairings(shop), 0, BASE + pairings(shop) * each + sets * eachSet);
  }

  /** {@code most} drawings in the workbook, or one for each pairing if there are fewer. */
  public static Foreseen drawings(Shop shop, int most) {
    long drawn = Math.min(most, pairings(shop));
    return new Foreseen(
        "The workbook with " + drawn + (drawn == 1 ? " drawing" : " drawings"),
        pairings(shop),
        drawn * BYTES_OF_DRAWING,
        BASE + drawn * HEAP_OF_DRAWING);
  }

  public static long pairings(Shop shop) {
    return (long) shop.machines().size() * shop.vises().size();
  }

  /** Prints a line about the size if it is large. */
  void announce(PrintWriter err) {
    if (bytes >= LARGE_FILE || pairings >= MANY_PAIRINGS) {
      err.println(
          what
              + (bytes > 0 ? ": up to about " + amount(bytes) + ", " : ": ")
              + pairings
              + " pairings, about "
              + amount(heap)
              + " of memory.");
    }
  }

  /**
   * Announces the result, or refuses it if the heap is too small.
   *
   * @throws ParameterException if it is refused
   */
  public void check(CommandSpec spec, String fewer) {
    Optional<String> refusal = refusal(Heap.now(heap), fewer);
    if (refusal.isPresent()) {
      throw new ParameterException(spec.commandLine(), refusal.get());
    }
    announce(spec.commandLine().getErr());
  }

  /**
   * The reason for a refusal; empty if the result is accepted.
   *
   * @param memory the heap of this JVM
   * @param fewer the option that makes the result smaller, as an imperative
   */
  Optional<String> refusal(Heap memory, String fewer) {
    if (bytes > LONGEST_PAGE) {
      return Optional.of(
          what
              + " becomes about "
              + amount(bytes)
              + ", more than the "
              + amount(LONGEST_PAGE)
              + " that one file can have. Nothing was written; "
              + fewer
              + ".");
    }
    if (heap <= memory.left()) {
      return Optional.empty();
    }
    long wanted = (heap + memory.used() + GIB - 1) / GIB;
    return Optional.of(
        what
            + " of "
            + pairings
            + " pairings takes about "
            + amount(heap)
            + " of memory; Java has "
            + amount(memory.left())
            + " left. Nothing was written; "
            + fewer
            + ", or give Java more: java -Xmx"
            + wanted
            + "g -jar jawroom.jar …");
  }

  private static String amount(long bytes) {
    long megabytes = Math.max(1, (bytes + MB - 1) / MB);
    return megabytes < 10_000 ? megabytes + " MB" : (megabytes + 999) / 1000 + " GB";
  }
}
