package org.jawroom.placement.job;

import java.util.List;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.clearance.part.Part;
import org.jawroom.geometry.Axis;
import org.jawroom.geometry.Interval;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.space.Place;
import org.jawroom.placement.space.Window;
import org.jawroom.shop.Job;
import org.jawroom.shop.vise.Vise;

/**
 * Where a vise stands in a row, and what the other vises of the row leave its jobs.
 *
 * @param stand the place of the vise
 * @param along the axis of the slots
 * @param room where the workpiece must stay along the slots, touching its ends included: the
 *     spacing away from all that the other vises sweep, {@link Interval#ALL} without any
 * @param others the other vises, bare
 */
public record Beside(Recommendation stand, Axis along, Interval room, List<Vise> others) {
  public Beside {
    others = List.copyOf(others);
  }

  /** The position of the vise. */
  Place place() {
    return new Place(stand.x(), stand.y());
  }

  /** Its position alone. */
  Window window() {
    return new Window(stand.x(), stand.x(), stand.y(), stand.y());
  }

  /** Whether the workpiece keeps its distance from the other vises. */
  boolean leavesRoom(Vise vise, Job job) {
    long position = along == Axis.X ? stand.x() : stand.y();
    for (Part part : JobPart.of(vise, job)) {
      Interval swept = part.over(vise.opening(), stand.handleTo()).along(along).plus(position);
      if (swept.lo() < room.lo() || swept.hi() > room.hi()) {
        return false;
      }
    }
    return true;
  }
}
