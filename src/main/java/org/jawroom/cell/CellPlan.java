package org.jawroom.cell;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.jawroom.placement.job.JobOutcome;
import org.jawroom.placement.pairing.Caveat;
import org.jawroom.placement.pairing.Inspection;
import org.jawroom.placement.pairing.Pairing;
import org.jawroom.placement.pairing.SolvedPairing;
import org.jawroom.placement.space.Place;
import org.jawroom.plan.model.Assigned;
import org.jawroom.plan.model.Plan;
import org.jawroom.plan.model.Wishes;
import org.jawroom.shop.machine.Machine;
import org.jawroom.shop.vise.Vise;

/**
 * A plan together with the cell it was made for.
 *
 * @param before the kinds of vise on each machine that the plan was asked to keep, if any; see
 *     {@link Wishes#keep}
 */
public record CellPlan(ShopCell of, Plan plan, Optional<Map<Integer, List<Integer>>> before) {

  /**
   * The assignment of one machine.
   *
   * @param machine its index in the cell
   * @param given its vises; empty: none
   * @param boughtMachine whether the machine itself is bought
   * @param boughtVises those of its kinds, as cell indices, of which one or more are bought for it
   * @param machineCost the price of the machine, if it is bought, in hundredths
   * @param viseCost of one of each of the vises bought
   */
  public record Row(
      int machine,
      Optional<Assigned> given,
      boolean boughtMachine,
      List<Integer> boughtVises,
      long machineCost,
      long viseCost) {
    public Row {
      boughtVises = List.copyOf(boughtVises);
    }

    /** What is bought for it, in hundredths. */
    public long cost() {
      return machineCost + viseCost;
    }
  }

  /** Why a machine gets no vise. */
  public enum Bare {
    /** No pairing with it may be chosen. */
    NOTHING_FITS,
    /** Its possible vises are used elsewhere or not in stock. */
    NONE_LEFT,
    /** A pairing may be chosen, but time ran out. */
    NOT_SOUGHT,
    /** The machine would have to be bought, and is not. */
    NOT_BOUGHT
  }

  /**
   * One row per machine of the cell. Purchases of a kind are attributed to the last machines that
   * have it.
   */
  public List<Row> rows() {
    int[] left = of.cell().vises().stream().mapToInt(kind -> kind.stock()).toArray();
    List<Row> rows = new ArrayList<>();
    for (int machine = 0; machine < of.cell().machines().size(); machine++) {
      Optional<Assigned> given = given(machine);
      List<Integer> boughtVises = new ArrayList<>();
      long viseCost = 0;
      if (given.isPresent()) {
        for (int vise : given.get().fit().vises()) {
          int kind = of.cell().kind(vise);
          left[kind] -= given.get().count();
          if (left[kind] < 0) {
            boughtVises.add(vise);
            viseCost += of.cell().vises().get(kind).price().getAsLong();
          }
        }
      }
      boolean boughtMachine =
          given.isPresent() && of.cell().machines().get(machine).price().isPresent();
      long machineCost = boughtMachine ? of.cell().machines().get(machine).price().getAsLong() : 0;
      rows.add(new Row(machine, given, boughtMachine, boughtVises, machineCost, viseCost));
    }
    return Collections.unmodifiableList(rows);
  }

  private Optional<Assigned> given(int machine) {
    return plan.machines().stream()
        .filter(one -> one.fit().pick().machine() == machine)
        .findFirst();
  }

  public Machine machine(Row row) {
    return of.shop().machines().get(row.machine());
  }

  /** The several kinds assigned to a machine; empty if it gets one kind or none. */
  public Optional<CellSet> set(Row row) {
    return row.given().map(given -> of.sets().get(given.fit().pick()));
  }

  /** Whether one of a machine's vises is bought. */
  public boolean isBought(Row row, Vise vise) {
    return row.boughtVises().contains(of.shop().vises().indexOf(vise));
  }

  /** The price of a vise in hundredths; 0 if it has none. */
  public long price(Vise vise) {
    int kind = of.cell().kind(of.shop().vises().indexOf(vise));
    return of.cell().vises().get(kind).price().orElse(0);
  }

  /**
   * The pairing assigned to a machine.
   *
   * @throws java.util.NoSuchElementException if it gets none
   * @throws IllegalArgumentException if it gets several kinds
   */
  public CellPairing pairing(Row row) {
    return of.at(row.given().orElseThrow().fit().pick());
  }

  /**
   * Where the vises of a machine stand side by side, one place each, in the turn and mount of
   * {@link CellPairing#sideBySide}; of fewer than stand there the middle ones. Empty for a single
   * vise, which stands where its pairing says.
   *
   * @throws java.util.NoSuchElementException if it gets none
   */
  public List<Place> sideBySide(Row row) {
    int count = row.given().orElseThrow().count();
    return count == 1 ? List.of() : pairing(row).sideBySide().middle(count);
  }

  /**
   * What must be said of the vises of a machine side by side, beyond what is said of one alone.
   * Empty for a single vise.
   *
   * @throws java.util.NoSuchElementException if it gets none
   */
  public Set<Caveat> besides(Row row) {
    List<Place> places = sideBySide(row);
    if (places.isEmpty()) {
      return Set.of();
    }
    CellPairing pairing = pairing(row);
    SolvedPairing solved =
        Pairing.solved(of.shop().settings(), pairing.outcome().machine(), pairing.outcome().vise());
    Set<Caveat> caveats = new TreeSet<>();
    for (Inspection one : solved.inspections(pairing.sideBySide(), places)) {
      caveats.addAll(solved.caveatsAt(one.place()));
    }
    caveats.removeAll(pairing.outcome().caveats());
    return caveats;
  }

  /** Why a machine gets no vise; valid only if it gets none. */
  public Bare whyBare(Row row) {
    if (machine(row).candidate()) {
      return Bare.NOT_BOUGHT;
    }
    boolean any = of.cell().fits().stream().anyMatch(fit -> fit.pick().machine() == row.machine());
    if (!any) {
      return Bare.NOTHING_FITS;
    }
    return plan.isProven() ? Bare.NONE_LEFT : Bare.NOT_SOUGHT;
  }

  /** The outcome of a job on every vise that holds it, in the order of the machines. */
  public List<JobOutcome> holding(int job) {
    return plan.machines().stream()
        .flatMap(one -> of.holding(one.fit().pick(), job).stream())
        .toList();
  }

  /** Indices of the jobs that no machine holds without something unchecked, in cell order. */
  public List<Integer> heldUnchecked() {
    return plan.held().stream()
        .filter(job -> holding(job).stream().noneMatch(one -> one.unchecked().isEmpty()))
        .toList();
  }

  /** Indices of the jobs that no machine holds without a doubt, in cell order. */
  public List<Integer> heldInDoubt() {
    return plan.held().stream()
        .filter(job -> holding(job).stream().noneMatch(one -> one.inDoubt().isEmpty()))
        .toList();
  }

  /** The total number of pieces of all jobs. */
  public long pieces() {
    return of.shop().jobs().stream().mapToLong(job -> job.quantity()).sum();
  }

  /** The number of pieces held. */
  public long heldPieces() {
    return plan.held().stream().mapToLong(job -> of.shop().jobs().get(job).quantity()).sum();
  }

  /** Whether the kind on a machine differs from before; empty without a previous state. */
  public Optional<Boolean> isChanged(Row row) {
    return before.map(
        kinds -> {
          List<Integer> now = row.given().map(one -> one.fit().vises()).orElse(List.of());
          return !now.equals(kinds.getOrDefault(row.machine(), List.of()));
        });
  }

  /** The kinds on a machine before, without those that no longer exist; empty if it was bare. */
  public List<String> wasThere(Row row) {
    return before
        .map(kinds -> kinds.getOrDefault(row.machine(), List.of()))
        .orElse(List.of())
        .stream()
        .filter(vise -> vise != Wishes.GONE)
        .map(vise -> of.shop().vises().get(vise).name())
        .toList();
  }
}
