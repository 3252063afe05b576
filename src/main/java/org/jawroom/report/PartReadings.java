package org.jawroom.report;

import java.util.Optional;
import java.util.Set;
import org.jawroom.clearance.JawEnd;
import org.jawroom.clearance.Limit;
import org.jawroom.clearance.Situation;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.Recommendation;
import org.jawroom.shop.Jaws;
import org.jawroom.shop.Mount;
import org.jawroom.shop.Vise;
import org.jawroom.shop.VisePart;

/** The readings that say where the end of a part stands, seen from the vise's bolts. */
final class PartReadings {

  /** The axes of the vise frame. */
  private enum Along {
    U,
    V,
    W
  }

  private final Vise vise;
  private final Recommendation place;
  private final Limit limit;
  private final Along along;
  private final boolean far;
  private final Set<String> readings;

  /** {@code high}: the guard faces the part's high end along the limiting axis. */
  PartReadings(Vise vise, Recommendation place, Limit limit, boolean high, Set<String> readings) {
    this.vise = vise;
    this.place = place;
    this.limit = limit;
    this.readings = readings;
    Axis axis = limit.axis();
    this.along = axis == Axis.Z ? Along.W : axis == place.handleTo().uAxis() ? Along.U : Along.V;
    long u = along == Along.U ? 1 : 0;
    long direction =
        axis == Axis.X
            ? place.handleTo().x(u, 1 - u)
            : axis == Axis.Y ? place.handleTo().y(u, 1 - u) : 1;
    this.far = high == (direction > 0);
  }

  /** Adds where the bolts are across the slots, and how they sit in their holes. */
  void addBolts() {
    String of =
        vise.mounts().stream()
            .filter(mount -> mount.name().equals(place.mount()))
            .findFirst()
            .filter(mount -> !mount.own())
            .map(Mount::name)
            .map(name -> " of " + name)
            .orElse("");
    if (along == Along.U) {
      add(of.isEmpty() ? "bolt_u" : "u" + of, of.isEmpty() ? "bolt_hole_u" : "hole_u" + of);
    } else {
      add(
          of.isEmpty() ? "half of bolt_spacing" : "v" + of,
          of.isEmpty() ? "bolt_hole_v" : "hole_v" + of);
    }
  }

  /** Adds where the part's end is. */
  void addEdge() {
    Optional<VisePart> row =
        vise.parts().stream()
            .filter(part -> part.name().equals(limit.part()) && !isOwnHandle(part))
            .findFirst();
    if (row.isPresent()) {
      addRow(row.get());
      return;
    }
    switch (along) {
      case U -> addAlong();
      case V -> addAcross();
      case W -> addHeight();
    }
  }

  /** Whether the limiting handle is that of the row's own columns. */
  private boolean isOwnHandle(VisePart part) {
    return part.name().equals(VisePart.HANDLE) && vise.simple() && !vise.handle().radius().isNone();
  }

  private void addRow(VisePart part) {
    String edge = along.name().toLowerCase(java.util.Locale.ROOT) + (far ? "_max" : "_min");
    add((along == Along.U ? at(edge) : edge) + " of " + part.name());
  }

  private void addAlong() {
    switch (limit.part()) {
      case "base" -> add(far ? "front_reach" : "rear_reach");
      case "fixed jaw" -> {
        if (!far) {
          add("fixed_jaw_thickness");
        }
      }
      case "moving jaw", "front jaw" -> jaw(far);
      case "rear jaw" -> jaw(!far);
      case "screw rear" -> {
        add("rear_reach");
        if (!far) {
          add(at("rear_projection"));
        }
      }
      case "screw front" -> {
        add("front_reach");
        if (far) {
          add(at("front_projection"));
        }
      }
      case VisePart.HANDLE -> {
        add("front_reach", at("front_projection"));
        if (far) {
          add("handle_depth");
        }
      }
      default -> addBolts();
    }
  }

  private void jaw(boolean back) {
    String opening = limit.opening() == JawEnd.CLOSED ? "opening_min" : "opening_max";
    add(vise.jaws().both() ? "half of " + opening : opening);
    if (back) {
      add("moving_jaw_thickness");
    }
  }

  private void addAcross() {
    switch (limit.part()) {
      case "base" -> add("half of base_width");
      case "fixed jaw", "moving jaw", "front jaw", "rear jaw" -> add("half of " + wider());
      case "screw rear", "screw front" -> add("half of screw_diameter");
      case VisePart.HANDLE -> add("handle_radius");
      default -> addBolts();
    }
  }

  private void addHeight() {
    switch (limit.part()) {
      case "base" -> {
        if (far) {
          add("bed_height");
        }
      }
      case "fixed jaw", "moving jaw", "front jaw", "rear jaw" -> {
        add("bed_height");
        if (far) {
          add(taller());
        }
      }
      case "screw rear", "screw front" -> add("screw_height", "half of screw_diameter");
      case VisePart.HANDLE -> {
        boolean hangs = vise.handle().fullSwing() || limit.situation() == Situation.CUTTING;
        add("screw_height", far || hangs ? "handle_radius" : "half of screw_diameter");
      }
      default -> {
        if (far) {
          add(vise.boltGrip().isPresent() ? "bolt_grip" : "bed_height");
        }
      }
    }
  }

  private String wider() {
    Jaws jaws = vise.jaws();
    return jaws.platesWidth() > jaws.width() ? "plates_width" : "jaw_width";
  }

  private String taller() {
    Jaws jaws = vise.jaws();
    return jaws.platesHeight() > jaws.height() ? "plates_height" : "jaw_height";
  }

  /** The column of the two that tells the end of the opening which limits. */
  private String at(String column) {
    return column + (limit.opening() == JawEnd.OPEN ? "_open" : "_closed");
  }

  private void add(String... names) {
    readings.addAll(java.util.List.of(names));
  }
}
