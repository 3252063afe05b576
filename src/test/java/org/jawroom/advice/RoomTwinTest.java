package org.jawroom.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.geometry.Length;
import org.jawroom.geometry.Turn;
import org.jawroom.placement.Pairing;
import org.jawroom.placement.Verdict;
import org.jawroom.reference.RandomShops;
import org.jawroom.reference.RandomShops.Profile;
import org.jawroom.reference.ReferencePairing;
import org.jawroom.reference.SettingsDraft;
import org.jawroom.reference.ShopCsv;
import org.jawroom.shop.Guard;
import org.jawroom.shop.Machine;
import org.jawroom.shop.Settings;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.ShopReader;
import org.jawroom.tables.source.UnreadableInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The longest vise that a random machine is said to have room for, written as tables, read and
 * solved by both solvers, goes; 0.05 mm longer it does not.
 *
 * <p>Its bolts' holes are left blank, so that it may stand anywhere: it is then {@code unknown}
 * where it goes and {@code no place} where it does not. A blank is judged with every tolerance as
 * 0, so the machine's is asked for as clearance instead, which comes to the same.
 */
class RoomTwinTest {
  private static final long MORE = Length.MM / 20;
  private static final List<Long> WIDTHS = List.of(150 * Length.MM, 1100 * Length.MM);

  @TempDir private Path folder;

  private int limited;
  private int never;

  @Test
  void longest_randomMachines_goesAndNotLonger() throws IOException {
    for (Profile profile : Profile.values()) {
      for (int seed = 0; seed < WIDTHS.size(); seed++) {
        Shop shop = RandomShops.shop(profile, seed);
        Optional<ViseSize> size = ViseSize.of(RandomShops.vise(shop));
        if (size.isPresent()) {
          check(shop, size.get(), WIDTHS.get(seed), profile + " seed " + seed);
        }
      }
    }
    assertTrue(limited > 20, "only " + limited);
    assertTrue(never > 0, "only " + never);
  }

  private void check(Shop shop, ViseSize size, long width, String name) throws IOException {
    Machine machine = withoutOwnTolerances(RandomShops.machine(shop));
    for (Room room :
        new RoomSearch(shop.settings(), machine, size).rooms(List.of(width), List.of())) {
      RoomLimit limit = room.longest().get(0);
      Turn turn = room.turns().get(0);
      switch (limit.relation()) {
        case AT_MOST -> {
          limited++;
          long most = limit.most().getAsLong();
          assertEquals("unknown unknown", verdicts(shop, machine, size, turn, most, width), name);
          assertEquals(
              "no place no place", verdicts(shop, machine, size, turn, most + MORE, width), name);
        }
        case NEVER -> {
          never++;
          assertEquals("no place no place", verdicts(shop, machine, size, turn, 0, width), name);
        }
        default ->
            assertEquals(
                "unknown unknown",
                verdicts(shop, machine, size, turn, 10_000 * Length.MM, width),
                name);
      }
    }
  }

  /** By the solver and by the reference. */
  private String verdicts(
      Shop shop, Machine machine, ViseSize size, Turn turn, long length, long width)
      throws IOException {
    long tolerance = machine.provenance().tolerance();
    Settings asking = withMore(shop.settings(), tolerance);
    Machine exact =
        machine
            .withProvenance(machine.provenance().withTolerance(0))
            .withGuardRows(
                machine.guardRows().stream()
                    .map(
                        guard ->
                            guard.clearance().isEmpty()
                                ? guard
                                : guard.withClearance(
                                    OptionalLong.of(guard.clearance().getAsLong() + tolerance)))
                    .toList());
    Map<String, String> files =
        new LinkedHashMap<>(
            ShopCsv.files(new Shop(asking, List.of(exact), shop.vises(), List.of())));
    long hand = Math.max(asking.clearance(), asking.handRoom());
    files.put(
        "vises.csv",
        "vise,jaw_width,jaw_height,bed_height,opening_max,base_width,rear_reach,front_reach,"
            + "fixed_jaw_thickness,moving_jaw_thickness,rear_projection_closed,rear_projection_open,"
            + "front_projection_closed,front_projection_open,handle_radius,bolt_spacing,bolt_u,turns\n"
            + "block,0,0,"
            + mm(size.bedHeight())
            + ",0,0,0,0,0,0,none,none,none,none,none,0,0,"
            + turn.word()
            + "\n");
    files.put(
        "vise_parts.csv",
        "vise,part,when,w_min,w_max,u_min_closed,u_max_closed,v_min,v_max\n"
            + "block,body,always,0,"
            + mm(size.topCutting())
            + ","
            + around(length)
            + ","
            + around(width)
            + "\n"
            + "block,handle,loading,"
            + mm(hand)
            + ","
            + mm(Math.max(hand, size.topLoading()))
            + ","
            + around(length)
            + ","
            + around(width)
            + "\n");
    files.remove("mounts.csv");
    Shop told = read(files);
    Verdict ours =
        Pairing.solve(told.settings(), told.machines().get(0), told.vises().get(0)).verdict();
    Verdict theirs =
        ReferencePairing.solve(told.settings(), told.machines().get(0), told.vises().get(0))
            .verdict();
    return ours.code() + " " + theirs.code();
  }

  private Shop read(Map<String, String> files) throws IOException {
    Path tables = Files.createTempDirectory(folder, "shop");
    for (Map.Entry<String, String> file : files.entrySet()) {
      Files.writeString(tables.resolve(file.getKey()), file.getValue());
    }
    try {
      Reading reading = ShopReader.read(tables, Map.of());
      return reading.shop().orElseThrow(() -> new AssertionError(reading.faults() + "\n" + files));
    } catch (UnreadableInput unread) {
      throw new IOException(unread);
    }
  }

  private static Machine withoutOwnTolerances(Machine machine) {
    return machine.withGuardRows(
        machine.guardRows().stream()
            .map(
                guard ->
                    new Guard(
                        guard.name(),
                        guard.kind(),
                        guard.carriedBy(),
                        guard.when(),
                        guard.side(),
                        guard.gap(),
                        guard.limits(),
                        guard.clearance(),
                        OptionalLong.empty()))
            .toList());
  }

  private static Settings withMore(Settings now, long more) {
    SettingsDraft draft = SettingsDraft.of(now);
    draft.clearance += more;
    draft.handRoom += more;
    return draft.build();
  }

  private static String around(long length) {
    return mm(-length / 2) + "," + mm(length / 2);
  }

  private static String mm(long length) {
    return BigDecimal.valueOf(length).divide(BigDecimal.valueOf(Length.MM)).toPlainString();
  }
}
