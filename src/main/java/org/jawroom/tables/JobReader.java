package org.jawroom.tables;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import org.jawroom.geometry.Axis;
import org.jawroom.shop.Job;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.Row;

/** Parses one row of {@code jobs}. */
final class JobReader {
  private JobReader() {}

  /** Empty, with faults, if the row is unsound. */
  static Optional<Job> read(Owners.Owner owner, Owners machines) {
    Row row = owner.row();
    OptionalLong length = row.length("part_length");
    OptionalLong width = row.length("part_width");
    OptionalLong height = row.length("part_height");
    OptionalLong grip = row.length("grip");
    Optional<BigDecimal> mass = row.mass("mass");
    Dimension tool = row.dimension("tool_length");
    Optional<Axis> jawsAlong =
        row.word("jaws_along").filter(word -> !word.equals("any")).map(JobReader::axis);
    List<String> allowed = machines.list(row, "machines");
    OptionalInt quantity = row.count("quantity");
    row.unit();
    if (!row.isSound()) {
      return Optional.empty();
    }
    return Optional.of(
        new Job(
            owner.name(),
            length.getAsLong(),
            width.getAsLong(),
            height.getAsLong(),
            grip,
            mass,
            tool,
            jawsAlong,
            allowed,
            quantity.getAsInt()));
  }

  private static Axis axis(String letter) {
    return letter.equals("x") ? Axis.X : Axis.Y;
  }
}
