package org.jawroom.tables.row;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jawroom.geometry.Length;
import org.jawroom.shop.value.Dimension;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.LengthRange;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.ListedLengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.row.size.KnownSizes;
import org.jawroom.tables.row.size.SizeCheck;
import org.jawroom.tables.schema.CellKind;
import org.jawroom.tables.schema.ColumnSpec;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.grid.Cell;

/**
 * Reads the cells of one row that hold lengths: one, several or a range. A length outside the
 * bounds of its column is refused.
 */
final class LengthCells {
  private final TableSpec table;
  private final Ledger ledger;
  private final Supplier<Unit> unit;
  private final Set<String> bare = new LinkedHashSet<>();

  /**
   * @param unit the unit of bare numbers; asked for each cell, since a unit that cannot be read is
   *     a fault only of a row that holds a length
   */
  LengthCells(TableSpec table, Ledger ledger, Supplier<Unit> unit) {
    this.table = table;
    this.ledger = ledger;
    this.unit = unit;
  }

  /** The columns read so far in which a bare number other than 0 stands for a length. */
  Set<String> bareColumns() {
    return bare;
  }

  long length(ColumnSpec spec, Cell cell) throws BadCell {
    if (LengthRange.isRange(cell.text())) {
      throw new BadCell("is a range, but " + spec.name() + " takes one length");
    }
    Optional<String> meant = LengthRange.hyphenated(cell.text());
    if (meant.isPresent()) {
      throw new BadCell(
          "has a hyphen between two numbers; "
              + (spec.takesRanges()
                  ? "if it is a range, write " + meant.get()
                  : "write one length"));
    }
    return checked(
        spec, Lengths.parse(cell.text(), unit.get(), ledger.sign().isCommaIn(cell)), cell);
  }

  /** Lengths separated by {@code ;}. */
  List<Long> lengths(ColumnSpec spec, Cell cell) throws BadCell {
    List<Long> lengths = new ArrayList<>();
    for (String item : cell.text().split(";", -1)) {
      lengths.add(oneOf(spec, cell.item(item)));
    }
    return lengths;
  }

  /** One of several lengths; a missing {@code ;} may have joined it with others. */
  private long oneOf(ColumnSpec spec, Cell item) throws BadCell {
    try {
      return length(spec, item);
    } catch (BadCell why) {
      throw ListedLengths.refused(item.text(), why);
    }
  }

  /**
   * A range; where only a greatest length is written, the least is 0, or there is none if the
   * column may be negative.
   */
  Dimension range(ColumnSpec spec, Cell cell) throws BadCell {
    LengthRange range = LengthRange.parse(cell.text(), unit.get(), ledger.sign().isCommaIn(cell));
    long lo = spec.kind() == CellKind.LENGTH ? -Length.ENDLESS : 0;
    if (range.lo().isPresent()) {
      lo = checked(spec, range.lo().get(), cell);
    }
    long hi = Length.ENDLESS;
    if (range.hi().isPresent()) {
      hi = checked(spec, range.hi().get(), cell);
    }
    return Dimension.within(lo, hi);
  }

  private long checked(ColumnSpec spec, Lengths.Read read, Cell cell) throws BadCell {
    if (read.bare() && read.value() != 0) {
      bare.add(spec.name());
    }
    SizeCheck.checked(spec, read.value());
    KnownSizes.check(table, spec.name(), read, ledger.sign().isCommaIn(cell));
    return read.value();
  }
}
