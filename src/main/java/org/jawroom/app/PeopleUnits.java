package org.jawroom.app;

import org.jawroom.report.format.PeopleUnit;
import org.jawroom.shop.Machine;
import org.jawroom.tables.Reading;

/** The unit in which people read what a command writes. */
public final class PeopleUnits {
  private PeopleUnits() {}

  /** Of what is about the whole shop. */
  static PeopleUnit ofShop(Reading reading) {
    return unit(reading.notation().inches());
  }

  /** Of what is about one machine. */
  public static PeopleUnit of(Reading reading, Machine machine) {
    return unit(reading.notation().inches(machine));
  }

  private static PeopleUnit unit(boolean inches) {
    return inches ? PeopleUnit.INCH : PeopleUnit.MM;
  }
}
