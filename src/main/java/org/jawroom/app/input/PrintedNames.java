package org.jawroom.app.input;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jawroom.drawing.text.Typeface;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;
import org.jawroom.tables.row.Origins;
import org.jawroom.tables.schema.TableSpec;

/**
 * Names as cards and drawings print them. A letter that no font has becomes a dot; then the table's
 * row is printed beside the name, so that two such names are not confused, and a line on {@code
 * err} says so.
 */
public record PrintedNames(Origins origins, PrintWriter err) {

  /** The largest number of letters listed. */
  private static final int NAMED = 5;

  /** Whether every letter of {@code name} can be printed. */
  public static boolean isReadable(String name) {
    return Typeface.lacking(name).isEmpty();
  }

  /** The letters of {@code name} that no font has, and what to do about it. */
  public static String advice(String name) {
    List<String> letters = Typeface.lacking(name);
    return "no font on this computer has "
        + letters.stream()
            .limit(NAMED)
            .map(letter -> letter + " (U+%04X)".formatted(letter.codePointAt(0)))
            .collect(Collectors.joining(", "))
        + (letters.size() > NAMED ? " and " + (letters.size() - NAMED) + " more" : "")
        + ": install one that has, or use letters that print.";
  }

  /** Prints a line for each name that will have dots; the reports themselves have it in full. */
  public void announce(Shop shop) {
    shop.machines().forEach(this::of);
    shop.vises().stream().filter(vise -> !vise.isTurned()).forEach(this::of);
  }

  /** A copy of the machine and its guards with printable names. */
  public Machine of(Machine machine) {
    String name = machine.name();
    return machine.toBuilder()
        .name(printed(TableSpec.MACHINES, name))
        .guardRows(
            machine.guardRows().stream()
                .map(guard -> guard.withName(printed(TableSpec.GUARDS, name, guard.name())))
                .toList())
        .build();
  }

  /** A copy of the vise, its parts and mounts with printable names. */
  public Vise of(Vise vise) {
    String name = vise.row();
    return vise.toBuilder()
        .name(printed(TableSpec.VISES, name) + vise.name().substring(name.length()))
        .parts(
            vise.parts().stream()
                .map(part -> part.withName(printed(TableSpec.VISE_PARTS, name, part.name())))
                .toList())
        .mounts(
            vise.mounts().stream()
                .map(mount -> mount.withName(printed(TableSpec.MOUNTS, name, mount.name())))
                .toList())
        .build();
  }

  /** The settings for the copies of a machine and of a vise: what is in doubt stays so. */
  public static Settings settings(
      Settings settings, Machine machine, Machine printed, Vise vise, Vise itsPrinted) {
    return settings.toBuilder()
        .evidence(
            settings
                .evidence()
                .alsoCalled(machine.name(), printed.name())
                .alsoCalled(vise.name(), itsPrinted.name()))
        .build();
  }

  /** A copy of the set whose vises have printable names. */
  public ViseSet of(ViseSet set) {
    return new ViseSet(
        set.name(),
        set.members().stream()
            .map(member -> new ViseSet.Member(of(member.vise()), member.count()))
            .toList(),
        List.of());
  }

  /** The settings for the copies of a machine and of the vises of a set. */
  public static Settings settings(
      Settings settings, Machine machine, Machine printed, ViseSet set, ViseSet itsPrinted) {
    Settings named = settings;
    for (int i = 0; i < set.members().size(); i++) {
      named =
          settings(
              named,
              machine,
              printed,
              set.members().get(i).vise(),
              itsPrinted.members().get(i).vise());
    }
    return named;
  }

  private String printed(TableSpec table, String... names) {
    String name = names[names.length - 1];
    if (isReadable(name)) {
      return name;
    }
    Optional<Origins.Origin> row = origins.find(table, names);
    err.println(
        "\""
            + name
            + "\""
            + row.map(origin -> " (" + origin + ")").orElse("")
            + " is printed with dots: "
            + advice(name));
    return row.map(origin -> name + " (row " + origin.row() + ")").orElse(name);
  }
}
