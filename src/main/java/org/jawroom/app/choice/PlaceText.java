package org.jawroom.app.choice;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jawroom.geometry.Orientation;
import org.jawroom.shop.Standing;
import org.jawroom.shop.TapedPlace;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Provenance;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.cell.BadCell;
import org.jawroom.tables.cell.Lengths;
import org.jawroom.tables.cell.Unit;
import org.jawroom.tables.cell.name.Names;
import org.jawroom.tables.cell.name.NearestName;
import org.jawroom.tables.row.Notation;

/**
 * A place as it is written for a command: {@code front, left 242.5, front 245}, where the handle
 * points and the two measures of a setup card, and after them perhaps {@code mount NAME}.
 */
public record PlaceText(Notation notation, PrintWriter err) {
  private static final Pattern PARTS =
      Pattern.compile(
          "(front|right|rear|left)\\s*[,;]?\\s*left\\s+(.+?)\\s*[,;]?\\s*front\\s+(.+?)"
              + "(?:\\s*[,;]?\\s*mount\\s+(.+))?",
          Pattern.CASE_INSENSITIVE);

  /**
   * The vise standing there, its measures without a tolerance; empty, with one line on {@code err},
   * if that is no place of it.
   */
  public Optional<Standing> read(String text, Machine machine, Vise vise) {
    try {
      return Optional.of(parsed(text.strip(), machine, vise));
    } catch (BadCell e) {
      err.println("--at \"" + text + "\" " + e.getMessage());
      return Optional.empty();
    }
  }

  private Standing parsed(String text, Machine machine, Vise vise) throws BadCell {
    Matcher parts = PARTS.matcher(text);
    if (!parts.matches()) {
      throw new BadCell(
          "is no place; write where the handle points and the two measures of the setup card, as"
              + " \"front, left 242.5, front 245\", and if need be \", mount NAME\"");
    }
    Orientation turn = Orientation.valueOf(parts.group(1).toUpperCase(Locale.ROOT));
    if (!machine.turns().contains(turn) || !vise.turns().contains(turn)) {
      String name = machine.turns().contains(turn) ? vise.name() : machine.name();
      throw new BadCell(
          "has the handle to the " + turn.word() + ", which turns of " + name + " does not allow");
    }
    TapedPlace place =
        new TapedPlace(
            turn,
            length("left", parts.group(2), machine, machine.tableLength()),
            length("front", parts.group(3), machine, machine.tableWidth()));
    return new Standing(
        machine, vise, place, mount(parts.group(4), vise), new Provenance(0, true, "", ""));
  }

  private long length(String edge, String text, Machine machine, long table) throws BadCell {
    Lengths.Read read;
    try {
      read = Lengths.parse(text, notation.bare(), notation.decimalComma());
    } catch (BadCell e) {
      throw new BadCell("has " + edge + " \"" + text + "\", which " + e.getMessage());
    }
    boolean inches = notation.inches(machine);
    if (read.bare() && read.value() != 0 && inches != (notation.bare() == Unit.IN)) {
      // The card shows these figures in its unit, so nobody can know which is meant.
      throw new BadCell(
          "has "
              + edge
              + " \""
              + text
              + "\" without a unit, but the card is in "
              + (inches ? Unit.IN : Unit.MM).plural()
              + "; write "
              + read.number()
              + " in or "
              + read.number()
              + " mm");
    }
    long from = read.value();
    if (!TapedPlace.isNearTable(from, table)) {
      throw new BadCell(
          "has "
              + edge
              + " \""
              + text
              + "\", which is far off the table; it measures "
              + Lengths.inMillimetres(table)
              + " that way");
    }
    return from;
  }

  private static String mount(String written, Vise vise) throws BadCell {
    String name = written == null ? Mount.BASE_BOLTS : written;
    List<String> known = vise.mountNames();
    Optional<String> mount =
        known.stream().filter(one -> Names.key(one).equals(Names.key(name))).findFirst();
    if (mount.isEmpty()) {
      throw new BadCell(
          written == null
              ? "names no mount, but "
                  + vise.name()
                  + " has no base bolts; add mount and one of "
                  + String.join(", ", known)
              : "has mount \""
                  + written
                  + "\", which is no mount of "
                  + vise.name()
                  + NearestName.hint(written, known));
    }
    return mount.get();
  }
}
