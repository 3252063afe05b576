package org.jawroom.plan;

import java.util.ArrayList;
import java.util.List;

/** How many of its kind each machine gets. */
final class SettingOut {

  private SettingOut() {}

  /** One each; then what is left, to the first machines of the cell, as many as stand there. */
  static List<Assigned> of(Task task, Choice choice) {
    int[] left = new int[task.cell().vises().size()];
    for (int vise = 0; vise < left.length; vise++) {
      left[vise] = task.stock(vise) + task.bought(choice, vise);
    }
    choice.fits().forEach(fit -> left[task.fits().get(fit).vise()]--);
    List<Assigned> out = new ArrayList<>();
    for (int fit : choice.fits()) {
      Fit told = task.fits().get(fit);
      int more = Math.min(told.most() - 1, left[told.vise()]);
      left[told.vise()] -= more;
      out.add(new Assigned(told, 1 + more));
    }
    return out;
  }
}
