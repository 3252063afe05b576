package org.jawroom.report.survey.count;

import static org.jawroom.report.survey.count.RandomReport.cell;
import static org.jawroom.report.survey.count.RandomReport.isComfortable;
import static org.jawroom.report.survey.count.RandomReport.isOfUse;
import static org.jawroom.report.survey.count.RandomReport.length;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.jawroom.geometry.Length;
import org.jawroom.report.limits.Margins;
import org.jawroom.report.survey.count.Condition.Relation;
import org.junit.jupiter.api.Test;

/** Surveys of random reports against plain loops over their rows. */
class SurveyTwinTest {
  private static final long COMFORT = 3 * Length.MM;

  /** A condition, and the same as a plain test of a row. */
  private record Both(Condition condition, Predicate<List<String>> plain) {}

  private static final List<String> COLUMNS =
      List.of("verdict", "machine", "limited_by", "margin_mm", "shed", "room_over_jaws_mm");

  @Test
  void groups_byAnyColumns_areThePlainCounts() throws Exception {
    Random lot = new Random(71);
    int groups = 0;
    int blank = 0;
    for (int i = 0; i < 200; i++) {
      RandomReport report = new RandomReport(lot, 12);
      List<String> by =
          Stream.generate(() -> pick(lot, COLUMNS)).limit(1 + lot.nextInt(3)).toList();
      List<Both> where = conditions(lot);
      Asked asked = new Asked(by, where.stream().map(Both::condition).toList(), COMFORT);
      Survey survey = Survey.of(report.side(asked), Optional.empty(), asked);

      List<List<String>> chosen = chosen(report, where);
      Map<List<String>, List<List<String>>> expected = new LinkedHashMap<>();
      for (List<String> row : chosen) {
        List<String> key = by.stream().distinct().map(column -> cell(row, column)).toList();
        expected.computeIfAbsent(key, fresh -> new ArrayList<>()).add(row);
      }
      List<Map.Entry<List<String>, List<List<String>>>> ranked =
          new ArrayList<>(expected.entrySet());
      ranked.sort(Comparator.comparingInt(entry -> -entry.getValue().size()));
      assertEquals(ranked.size(), survey.groups().size(), () -> shown(report, asked));
      for (int rank = 0; rank < ranked.size(); rank++) {
        RowGroups.Group group = survey.groups().group(rank);
        List<List<String>> rows = ranked.get(rank).getValue();
        assertEquals(ranked.get(rank).getKey(), group.words(), () -> shown(report, asked));
        assertEquals(rows.size(), group.pairings());
        assertEquals(
            rows.stream().filter(row -> isComfortable(row, COMFORT)).count(), group.comfortable());
        assertMargins(rows, group.margins());
        groups++;
        blank += group.words().contains("") ? 1 : 0;
      }
      assertEquals(chosen.size(), survey.chosen());
      assertMargins(chosen, survey.margins());
    }
    assertTrue(groups > 2000 && blank > 200, groups + " groups, " + blank + " with a blank cell");
  }

  @Test
  void chosen_byEachRelation_areThoseOfThePlainTest() throws Exception {
    Random lot = new Random(72);
    Map<Relation, Integer> met = new HashMap<>();
    for (int i = 0; i < 600; i++) {
      RandomReport report = new RandomReport(lot, 8);
      Both both = condition(lot);
      Asked asked = new Asked(List.of("verdict"), List.of(both.condition), COMFORT);
      int chosen = report.side(asked).chosen().size();
      assertEquals(chosen(report, List.of(both)).size(), chosen, () -> shown(report, asked));
      if (chosen > 0 && chosen < report.rows.size()) {
        met.merge(both.condition.relation(), 1, Integer::sum);
      }
    }
    for (Relation relation : Relation.values()) {
      assertTrue(met.getOrDefault(relation, 0) > 20, relation + ": " + met);
    }
  }

  @Test
  void coverage_leavesOnlyMachinesWithoutAComfortableVise() throws Exception {
    Random lot = new Random(73);
    int several = 0;
    int unserved = 0;
    for (int i = 0; i < 200; i++) {
      RandomReport report = new RandomReport(lot, 3 + lot.nextInt(5));
      Asked asked = new Asked(List.of("verdict"), List.of(), COMFORT);
      Coverage coverage = Survey.of(report.side(asked), Optional.empty(), asked).coverage();
      Map<String, Set<String>> comfortable = new LinkedHashMap<>();
      for (List<String> row : report.rows) {
        Set<String> vises = comfortable.computeIfAbsent(cell(row, "machine"), m -> new HashSet<>());
        if (isComfortable(row, COMFORT)) {
          vises.add(cell(row, "vise"));
        }
      }
      Set<String> taken = new HashSet<>();
      coverage.vises().forEach(vise -> taken.add(vise.vise()));
      List<String> without = new ArrayList<>();
      comfortable.forEach(
          (machine, vises) -> {
            if (vises.isEmpty()) {
              without.add(machine);
            } else {
              assertTrue(vises.stream().anyMatch(taken::contains), () -> shown(report, asked));
            }
          });
      assertEquals(without, coverage.unserved().stream().map(Coverage.Unserved::machine).toList());
      assertEquals(comfortable.size() - without.size(), coverage.served());
      assertTrue(coverage.isProven());
      for (Coverage.Serving vise : coverage.vises()) {
        assertEquals(
            comfortable.values().stream().filter(all -> all.contains(vise.vise())).count(),
            vise.machines());
        assertEquals(
            comfortable.values().stream()
                .filter(all -> all.contains(vise.vise()))
                .filter(all -> all.stream().filter(taken::contains).count() == 1)
                .count(),
            vise.alone());
      }
      for (Coverage.Unserved machine : coverage.unserved()) {
        List<List<String>> standing =
            report.rows.stream()
                .filter(row -> cell(row, "machine").equals(machine.machine()) && isOfUse(row))
                .toList();
        assertEquals(standing.size(), machine.standing());
        OptionalLong best =
            standing.stream()
                .map(row -> length(row, "margin_mm"))
                .filter(Objects::nonNull)
                .mapToLong(Long::longValue)
                .max();
        assertEquals(best, machine.best());
        unserved++;
      }
      several += coverage.vises().size() > 1 ? 1 : 0;
    }
    assertTrue(several > 50 && unserved > 50, several + ", " + unserved);
  }

  @Test
  void moved_betweenTwoReports_isThePlainDifference() throws Exception {
    Random lot = new Random(74);
    int turned = 0;
    int changed = 0;
    for (int i = 0; i < 200; i++) {
      RandomReport old = new RandomReport(lot, 9);
      RandomReport now = new RandomReport(lot, 9);
      List<Both> where = conditions(lot);
      Asked asked =
          new Asked(List.of("verdict"), where.stream().map(Both::condition).toList(), COMFORT);
      Moved moved =
          Survey.of(now.side(asked), Optional.of(old.side(asked)), asked).moved().orElseThrow();
      Map<List<String>, List<String>> before = byNames(old);
      Map<List<String>, List<String>> after = byNames(now);
      Predicate<List<String>> meets =
          row -> row != null && where.stream().allMatch(both -> both.plain.test(row));
      int both = 0;
      List<Long> changes = new ArrayList<>();
      Map<Moved.Turn, Integer> turns = new HashMap<>();
      Set<List<String>> names = new HashSet<>(before.keySet());
      names.addAll(after.keySet());
      int onlyOld = 0;
      int onlyNew = 0;
      for (List<String> name : names) {
        List<String> was = before.get(name);
        List<String> is = after.get(name);
        if (!meets.test(was) && !meets.test(is)) {
          continue;
        }
        if (was == null) {
          onlyNew++;
        } else if (is == null) {
          onlyOld++;
        } else {
          both++;
          String from = cell(was, "verdict");
          String to = cell(is, "verdict");
          Long margin = length(was, "margin_mm");
          Long other = length(is, "margin_mm");
          if (!from.equals(to)) {
            turns.merge(new Moved.Turn(from, to), 1, Integer::sum);
          } else if (margin != null && other != null) {
            changes.add(other - margin);
          }
        }
      }
      assertEquals(
          List.of(both, onlyOld, onlyNew),
          List.of(moved.both(), moved.onlyOld(), moved.onlyNew()),
          () -> shown(old, asked) + shown(now, asked));
      Map<Moved.Turn, Integer> found = new HashMap<>();
      moved.turns().forEach(one -> found.put(one.turn(), one.pairings()));
      assertEquals(turns, found);
      changes.sort(Comparator.naturalOrder());
      assertEquals(changes.size(), moved.changes().count());
      List<Long> real = changes.stream().filter(change -> change != 0).toList();
      assertEquals(real.size(), moved.changed());
      for (int rank = 0; rank < real.size(); rank++) {
        Moved.Changed one = moved.changed(rank);
        assertEquals(real.get(rank), one.by());
        List<String> name = List.of(one.machine(), one.vise());
        assertEquals(length(before.get(name), "margin_mm"), one.before());
        assertEquals(length(after.get(name), "margin_mm"), one.after());
        assertEquals(cell(after.get(name), "verdict"), one.verdict());
      }
      assertEquals(real.stream().filter(change -> change < 0).count(), moved.shrunk());
      assertEquals(real.stream().filter(change -> change > 0).count(), moved.grown());
      turned += turns.size();
      changed += real.size();
    }
    assertTrue(turned > 2000 && changed > 300, turned + " turns, " + changed + " changes");
  }

  private static Map<List<String>, List<String>> byNames(RandomReport report) {
    Map<List<String>, List<String>> rows = new LinkedHashMap<>();
    report.rows.forEach(row -> rows.put(row.subList(0, 2), row));
    return rows;
  }

  private static void assertMargins(List<List<String>> rows, Margins margins) {
    List<Long> rising =
        rows.stream()
            .map(row -> length(row, "margin_mm"))
            .filter(Objects::nonNull)
            .sorted()
            .toList();
    assertEquals(rising.size(), margins.count());
    if (!rising.isEmpty()) {
      assertEquals(rising.get(0), margins.least());
      assertEquals(rising.get((rising.size() - 1) / 2), margins.median());
      assertEquals(rising.get(rising.size() - 1), margins.greatest());
    }
  }

  private static List<List<String>> chosen(RandomReport report, List<Both> where) {
    return report.rows.stream()
        .filter(row -> where.stream().allMatch(both -> both.plain.test(row)))
        .toList();
  }

  private static List<Both> conditions(Random lot) {
    return Stream.generate(() -> condition(lot)).limit(lot.nextInt(3)).toList();
  }

  private static Both condition(Random lot) {
    if (lot.nextBoolean()) {
      return text(
          pick(lot, List.of("verdict", "limited_by", "shed", "machine")),
          lot.nextBoolean(),
          pick(lot, List.of("fits", "no place", "door", "shed 1", "", "NA", "null", "nowhere")));
    }
    Relation relation = Relation.values()[lot.nextInt(Relation.values().length)];
    if (!relation.isOrder() && lot.nextInt(3) == 0) {
      return text("margin_mm", relation == Relation.EQUAL, "");
    }
    // At, just below and just above what many cells have.
    long bound = (6_000 + lot.nextInt(9) - 4) * (Length.MM / 2000) + lot.nextInt(3) - 1;
    return new Both(
        new Condition("margin_mm", relation, "bound", OptionalLong.of(bound)),
        row -> {
          Long cell = length(row, "margin_mm");
          return switch (relation) {
            case EQUAL -> cell != null && cell == bound;
            case OTHER -> cell == null || cell != bound;
            case LESS -> cell != null && cell < bound;
            case AT_MOST -> cell != null && cell <= bound;
            case MORE -> cell != null && cell > bound;
            case AT_LEAST -> cell != null && cell >= bound;
          };
        });
  }

  private static Both text(String column, boolean equal, String value) {
    return new Both(
        new Condition(column, equal ? Relation.EQUAL : Relation.OTHER, value, OptionalLong.empty()),
        row -> cell(row, column).equals(value) == equal);
  }

  private static <T> T pick(Random lot, List<T> all) {
    return all.get(lot.nextInt(all.size()));
  }

  private static String shown(RandomReport report, Asked asked) {
    try {
      return asked + "\n" + report.csv();
    } catch (java.io.IOException impossible) {
      throw new java.io.UncheckedIOException(impossible);
    }
  }
}
