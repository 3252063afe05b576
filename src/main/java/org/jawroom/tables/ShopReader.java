package org.jawroom.tables;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.jawroom.shop.Check;
import org.jawroom.shop.Job;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.shop.Standing;
import org.jawroom.shop.ViseSet;
import org.jawroom.shop.machine.Guard;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.value.Measurand;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;
import org.jawroom.tables.machine.AxesCell;
import org.jawroom.tables.machine.GuardReader;
import org.jawroom.tables.machine.MachineReader;
import org.jawroom.tables.row.Ledger;
import org.jawroom.tables.row.Note;
import org.jawroom.tables.row.Owners;
import org.jawroom.tables.row.Row;
import org.jawroom.tables.row.Rows;
import org.jawroom.tables.schema.TableSpec;
import org.jawroom.tables.source.CorrectedTables;
import org.jawroom.tables.source.Source;
import org.jawroom.tables.source.grid.CellBudget;
import org.jawroom.tables.source.grid.FaultList;
import org.jawroom.tables.source.grid.LeftAlone;
import org.jawroom.tables.source.grid.UnreadableInput;
import org.jawroom.tables.vise.MountNames;
import org.jawroom.tables.vise.MountReader;
import org.jawroom.tables.vise.PartReader;
import org.jawroom.tables.vise.ViseReader;

/** Reads a shop from a folder of CSV files or from one XLSX workbook. */
public final class ShopReader {
  private final FaultList faults = new FaultList();
  private final Ledger ledger;

  private ShopReader(Path input, Map<Measurand, Long> lengths, CellBudget room)
      throws UnreadableInput {
    this.ledger = new Ledger(CorrectedTables.of(Source.read(input, faults, room), lengths), faults);
  }

  /**
   * Reads everything and collects every fault.
   *
   * @param input a folder or a workbook
   * @param options settings by name that override the table's; not {@code unit}, since only the
   *     tables say in which unit they are written
   * @throws UnreadableInput if the input does not exist or cannot be opened as a folder or workbook
   */
  public static Reading read(Path input, Map<String, String> options) throws UnreadableInput {
    return read(input, options, CellBudget.UNKNOWN_HEAP);
  }

  /**
   * The same for tables of more than a million cells, as far as memory goes.
   *
   * @param heap the most memory that Java has, in bytes
   */
  public static Reading read(Path input, Map<String, String> options, long heap)
      throws UnreadableInput {
    return corrected(input, options, Map.of(), heap);
  }

  /**
   * Reads an input as if other lengths were written in some of its cells.
   *
   * @param lengths half-nanometres
   * @param heap the most memory that Java has, in bytes
   */
  public static Reading corrected(
      Path input, Map<String, String> options, Map<Measurand, Long> lengths, long heap)
      throws UnreadableInput {
    CellBudget room = new CellBudget(heap);
    try {
      return new ShopReader(input, lengths, room).read(options);
    } catch (OutOfMemoryError tooMuch) {
      // What was read is garbage by now, so that there is room for a line again.
      throw new UnreadableInput(input + " " + room.full(), tooMuch);
    }
  }

  private Reading read(Map<String, String> options) {
    noteLeftAlone();
    SettingsReader settingsReader = new SettingsReader(ledger);
    Settings settings = settingsReader.read(options);
    Owners machineRows = owners(TableSpec.MACHINES, "machine");
    List<Machine> machines = machines(machineRows);
    Owners viseRows = owners(TableSpec.VISES, "vise");
    List<Vise> vises = vises(viseRows);
    List<Job> jobs = new ArrayList<>();
    for (Owners.Owner owner : owners(TableSpec.JOBS, "job").all()) {
      JobReader.read(owner, machineRows).ifPresent(jobs::add);
    }
    BoltedCells bolted = new BoltedCells(machineRows, viseRows, machines, vises);
    List<Check> checks = new CheckReader(bolted, ledger).all();
    List<Standing> standing = new StandingReader(bolted, ledger).all();
    List<ViseSet> sets = new SetReader(machineRows, viseRows, vises, ledger).all();
    Optional<Shop> shop =
        faults.isEmpty()
            ? Optional.of(new Shop(settings, machines, vises, jobs, checks, standing, sets))
            : Optional.empty();
    return new Reading(
        shop,
        faults.sorted(),
        ledger.notes,
        ledger.source.files(),
        settingsReader.used(),
        ledger.notation(),
        ledger.origins);
  }

  private Owners owners(TableSpec table, String column) {
    return new Owners(table, Rows.of(table, ledger), column, ledger);
  }

  private List<Machine> machines(Owners owners) {
    Owners.Uniques uniques = new Owners.Uniques();
    SideRows<Guard> guards =
        new SideRows<>(
            TableSpec.GUARDS,
            owners,
            "guard",
            GuardReader.OWN_NAMES,
            (row, name, owner) -> {
              refuseTwice(uniques, row, "guard", name, owner);
              boolean found = !owner.name().isEmpty();
              return new GuardReader(
                      row, name, found ? AxesCell.tableMoves(owner.row()) : Optional.empty())
                  .read();
            },
            ledger);
    List<Machine> machines = new ArrayList<>();
    for (Owners.Owner owner : owners.all()) {
      new MachineReader(owner, ledger).read(guards.of(owner)).ifPresent(machines::add);
    }
    return machines;
  }

  private List<Vise> vises(Owners owners) {
    Owners.Uniques uniques = new Owners.Uniques();
    Set<String> withParts = new HashSet<>();
    SideRows<VisePart> parts =
        new SideRows<>(
            TableSpec.VISE_PARTS,
            owners,
            "part",
            PartReader.OWN_NAMES,
            (row, name, owner) -> {
              withParts.add(owner.name());
              refuseTwice(uniques, row, "part", name, owner);
              return PartReader.read(row, name);
            },
            ledger);
    MountNames mountNames = new MountNames();
    SideRows<MountReader.Named> mounts =
        new SideRows<>(
            TableSpec.MOUNTS,
            owners,
            "mount",
            List.of(Mount.BASE_BOLTS),
            (row, name, owner) -> {
              mountNames.refuseOtherCase(row, name, owner);
              return MountReader.read(row, name);
            },
            ledger);
    boolean allParts = !ledger.source.broken().contains(TableSpec.VISE_PARTS);
    List<Vise> vises = new ArrayList<>();
    for (Owners.Owner owner : owners.all()) {
      boolean partsKnown = allParts && !withParts.contains(owner.name());
      vises.addAll(
          new ViseReader(owner, owners, ledger)
              .read(parts.of(owner), mounts.of(owner), partsKnown));
    }
    return vises;
  }

  private static void refuseTwice(
      Owners.Uniques uniques, Row row, String column, String name, Owners.Owner owner) {
    if (!name.isEmpty() && !owner.name().isEmpty()) {
      uniques.add(row, column, owner.name(), name);
    }
  }

  private void noteLeftAlone() {
    for (LeftAlone one : ledger.source.leftAlone()) {
      String text = "left alone: " + one.why();
      ledger.notes.add(new Note(Note.Kind.LEFT_ALONE, one.name(), OptionalInt.empty(), text));
    }
  }
}
