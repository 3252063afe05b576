package org.jawroom.plan.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.jawroom.plan.model.CellModel;
import org.jawroom.plan.model.PlanMachine;
import org.jawroom.plan.model.Purchase;
import org.jawroom.plan.model.ViseType;

/** The purchases that a choice requires, and no more. */
public final class Shopping {

  private Shopping() {}

  public static List<Purchase> list(Task task, Choice choice) {
    List<Purchase> list = new ArrayList<>();
    int vises = task.cell().vises().size();
    for (int item = 0; item < task.items(); item++) {
      int count = task.bought(choice, item);
      if (count > 0) {
        Purchase.What what = item < vises ? Purchase.What.VISE : Purchase.What.MACHINE;
        int index = item < vises ? item : item - vises;
        list.add(new Purchase(what, index, count, count * task.price(item)));
      }
    }
    return list;
  }

  public static long cost(List<Purchase> purchases) {
    return purchases.stream().mapToLong(Purchase::price).sum();
  }

  /** The cell after all purchases on the list. */
  public static CellModel after(CellModel cell, List<Purchase> purchases) {
    List<ViseType> vises = new ArrayList<>(cell.vises());
    List<PlanMachine> machines = new ArrayList<>(cell.machines());
    for (Purchase purchase : purchases) {
      int index = purchase.index();
      if (purchase.what() == Purchase.What.VISE) {
        ViseType kind = vises.get(index);
        vises.set(index, new ViseType(kind.name(), kind.stock() + purchase.count(), kind.price()));
      } else {
        machines.set(index, new PlanMachine(machines.get(index).name(), OptionalLong.empty()));
      }
    }
    return new CellModel(machines, vises, cell.fits(), cell.jobs());
  }
}
