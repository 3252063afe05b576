package org.jawroom.clearance.obstacle;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.clearance.Blanks;
import org.jawroom.clearance.Certainty;
import org.jawroom.clearance.gap.ClearanceClass;
import org.jawroom.clearance.part.BoltParts;
import org.jawroom.clearance.part.JobPart;
import org.jawroom.clearance.part.Part;
import org.jawroom.clearance.part.ViseParts;
import org.jawroom.fixture.ShopCsv;
import org.jawroom.geometry.Interval;
import org.jawroom.geometry.Length;
import org.jawroom.reference.random.RandomJobs;
import org.jawroom.reference.random.RandomShops;
import org.jawroom.reference.random.RandomShops.Profile;
import org.jawroom.shop.Job;
import org.jawroom.shop.Shop;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.junit.jupiter.api.Test;

/** {@link SweptParts#withWork} against the same parts swept together from the start. */
class WorkPartsTwinTest {
  private static final int SEEDS = 20;

  private int taken;
  private int moving;
  private int tolerant;

  @Test
  void withWork_randomVises_isLikeAllPartsTogether() {
    for (Profile profile : Profile.values()) {
      for (long seed = 0; seed < SEEDS; seed++) {
        Shop shop = RandomJobs.shop(profile, seed);
        Vise vise = RandomShops.vise(shop);
        for (Job job : shop.jobs()) {
          Interval most = vise.opening();
          if (most.contains(job.width())) {
            Interval openings =
                Interval.of(job.width(), Math.min(most.hi(), job.width() + 10 * Length.MM));
            compare(parts(vise), vise, job, openings, profile + " " + ShopCsv.text(shop));
          }
        }
      }
    }
    assertTrue(taken > 1000 && moving > 500 && tolerant > 20, taken + ", " + moving + tolerant);
  }

  private void compare(List<Part> parts, Vise vise, Job job, Interval openings, String text) {
    List<Part> work = JobPart.of(vise, job);
    List<Part> both = new ArrayList<>(parts);
    both.addAll(work);
    SweptParts expected = SweptParts.of(both, openings);
    SweptParts actual = SweptParts.of(parts, vise.opening()).withWork(work, openings);

    assertEquals(expected.parts(), actual.parts(), text);
    assertEquals(expected.all(), actual.all(), text);
    assertEquals(expected.openings(), actual.openings(), text);
    assertEquals(expected.hasTolerance(), actual.hasTolerance(), text);
    for (ClearanceClass kind : ClearanceClass.ALL) {
      assertEquals(rows(expected.rows(kind)), rows(actual.rows(kind)), text);
      assertArrayEquals(expected.reach().box(kind, true), actual.reach().box(kind, true), text);
      assertArrayEquals(expected.reach().box(kind, false), actual.reach().box(kind, false), text);
      assertEquals(expected.someMeetTable(kind), actual.someMeetTable(kind), text);
    }
    assertEquals(expected.onlyLoading(), actual.onlyLoading(), text);
    for (int i = 0; i < both.size() && i < expected.parts().size(); i++) {
      assertEquals(expected.meetsTable(i), actual.meetsTable(i), text);
    }
    taken++;
    moving += parts.stream().anyMatch(part -> !part.u().isConstant()) ? 1 : 0;
    tolerant += actual.hasTolerance() ? 1 : 0;
  }

  /** The rows one by one, in the order of the parts. */
  private static List<List<Long>> rows(long[] all) {
    List<List<Long>> rows = new ArrayList<>();
    for (int at = 0; at < all.length; at += SweptParts.ROW) {
      List<Long> row = new ArrayList<>();
      for (int i = 0; i < SweptParts.ROW; i++) {
        row.add(all[at + i]);
      }
      rows.add(row);
    }
    rows.sort((one, other) -> Long.compare(index(one), index(other)));
    return rows;
  }

  private static long index(List<Long> row) {
    return row.get(SweptParts.INDEX);
  }

  /** Of the vise and the bolts of its first mount, if they are known. */
  private static List<Part> parts(Vise vise) {
    List<Part> parts = new ArrayList<>(ViseParts.of(vise, Certainty.AT_WORST, new Blanks()));
    Mount first = vise.mounts().isEmpty() ? null : vise.mounts().get(0);
    if (first != null && !first.hasBlank()) {
      parts.addAll(BoltParts.of(vise, first, 10 * Length.MM));
    }
    return parts;
  }
}
