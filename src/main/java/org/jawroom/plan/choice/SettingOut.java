package org.jawroom.plan.choice;

import java.util.ArrayList;
import java.util.List;
import org.jawroom.plan.model.Assigned;
import org.jawroom.plan.model.Fit;

/** Determines how many vises of its kind each machine gets. */
public final class SettingOut {

  private SettingOut() {}

  /**
   * One each; the rest goes to the first machines of the cell, up to the number that stand there.
   * Several kinds stand there with one each.
   */
  public static List<Assigned> of(Task task, Choice choice) {
    int[] left = new int[task.cell().vises().size()];
    for (int vise = 0; vise < left.length; vise++) {
      left[vise] = task.stock(vise) + task.bought(choice, vise);
    }
    for (int fit : choice.fits()) {
      for (int vise = 0; vise < left.length; vise++) {
        left[vise] -= task.uses(fit, vise);
      }
    }
    List<Assigned> out = new ArrayList<>();
    for (int fit : choice.fits()) {
      Fit pairing = task.fits().get(fit);
      int kind = task.cell().kind(pairing.vises().get(0));
      int more = Math.min(pairing.most() - 1, left[kind]);
      left[kind] -= more;
      out.add(new Assigned(pairing, 1 + more));
    }
    return out;
  }
}
