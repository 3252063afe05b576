package org.jawroom.app.input;

import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.machine.Machine;
import org.jawroom.tables.Reading;

/** The unit for people in the output of a command. */
public final class PeopleUnits {
  private PeopleUnits() {}

  /** For output about the whole shop. */
  public static PeopleUnit ofShop(Reading reading) {
    return unit(reading.notation().inches());
  }

  /** For output about one machine. */
  public static PeopleUnit of(Reading reading, Machine machine) {
    return unit(reading.notation().inches(machine));
  }

  private static PeopleUnit unit(boolean inches) {
    return inches ? PeopleUnit.INCH : PeopleUnit.MM;
  }
}
