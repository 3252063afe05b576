package org.jawroom.reference.model;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Length;
import org.jawroom.reference.space.Span;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Dimension;

/** The T-slots of a table: their centre lines and the threads that go with them. */
public record RefSlots(Machine machine) {
  /** DIN 508 (transcribed): slot width and the thread that goes with it, mm. */
  private static final long[][] THREADS = {
    {5, 4}, {6, 5}, {8, 6}, {10, 8}, {12, 10}, {14, 12}, {18, 16}, {22, 20}, {28, 24}, {36, 30},
    {42, 36}, {48, 42}, {54, 48}
  };

  private static final int STEPS_DOWN = 2;

  /** The thread for a slot's width, or 0 if no bolt fits. */
  public static long thread(long slotWidth) {
    List<Long> threads = threads(slotWidth, false);
    return threads.isEmpty() ? 0 : threads.get(0);
  }

  /** The thread for a slot's width and, if allowed, the next two smaller ones, largest first. */
  static List<Long> threads(long slotWidth, boolean smaller) {
    int own = -1;
    for (int i = 0; i < THREADS.length; i++) {
      if (slotWidth >= THREADS[i][0] * Length.MM) {
        own = i;
      }
    }
    List<Long> threads = new ArrayList<>();
    for (int i = own; i >= 0 && i >= own - (smaller ? STEPS_DOWN : 0); i--) {
      threads.add(THREADS[i][1] * Length.MM);
    }
    return threads;
  }

  Dimension width() {
    return machine.slots().width();
  }

  public int count() {
    return machine.slots().count();
  }

  boolean alongX() {
    return machine.slots().direction() == Axis.X;
  }

  /** Whether a blank leaves open where the slots lie. */
  boolean placesBlank() {
    return needsPitch() && machine.slots().pitch().isBlank();
  }

  boolean placesOpen() {
    return needsPitch() && machine.slots().pitch().isOpen();
  }

  private boolean needsPitch() {
    return machine.slots().positions().isEmpty() && count() > 1;
  }

  /** How far bolts reach along the slots. */
  long length() {
    return machine.slots().length().orElse(alongX() ? machine.tableLength() : machine.tableWidth());
  }

  /** The values of the pitch; 0 where none is needed. */
  private Span pitch() {
    return count() == 1 || !machine.slots().positions().isEmpty()
        ? new Span(0, 0)
        : RefLevel.values(machine.slots().pitch(), 0);
  }

  /** Where the centre line of slot {@code j} may lie, 1 at the front or left. */
  Span at(int j) {
    long edge = -(alongX() ? machine.tableWidth() : machine.tableLength()) / 2;
    if (!machine.slots().positions().isEmpty()) {
      long place = edge + machine.slots().positions().get(j - 1);
      return new Span(place, place);
    }
    if (machine.slots().first().isPresent()) {
      long first = edge + machine.slots().first().getAsLong();
      return pitch().halves(2L * (j - 1)).plus(new Span(first, first));
    }
    return pitch().halves(2L * j - (count() + 1));
  }
}
