package org.jawroom.tables.vise;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.Row;

/** Bolts with the same mount name are used together, so similar names must not be ambiguous. */
public final class MountNames {
  private final Map<List<String>, String> spellings = new HashMap<>();

  /**
   * Refuses a mount whose name differs from an earlier one of the same vise only in case or spaces.
   */
  public void refuseOtherCase(Row row, String name, Owners.Owner vise) {
    String first = spellings.putIfAbsent(List.of(vise.name(), Names.key(name)), name);
    if (first != null && !first.equals(name)) {
      row.fault("mount", "is spelled \"" + first + "\" before; spell one mount one way");
    }
  }
}
