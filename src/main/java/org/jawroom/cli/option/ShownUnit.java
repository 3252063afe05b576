package org.jawroom.cli.option;

import java.util.Optional;
import org.jawroom.report.format.PeopleUnit;
import org.jawroom.tables.cell.Unit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** The unit that people read, where there are no tables that have one. */
public final class ShownUnit {
  private ShownUnit() {}

  /**
   * The unit that {@code --show} names.
   *
   * @throws ParameterException if it names another than mm or in
   */
  public static PeopleUnit of(CommandSpec spec, String asked) {
    Optional<Unit> unit = Unit.named(asked).filter(named -> named == Unit.MM || named == Unit.IN);
    if (unit.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "option --show: \"" + asked + "\" is not possible here; write mm or in");
    }
    return unit.get() == Unit.IN ? PeopleUnit.INCH : PeopleUnit.MM;
  }
}
