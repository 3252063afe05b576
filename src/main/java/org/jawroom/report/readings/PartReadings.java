package org.jawroom.report.readings;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.clearance.gap.Limit;
import org.jawroom.geometry.Axis;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.shop.vise.Jaws;
import org.jawroom.shop.vise.Mount;
import org.jawroom.shop.vise.Vise;
import org.jawroom.shop.vise.VisePart;

/** The readings that locate the end of a part relative to the vise's bolts. */
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

  /** Adds the positions of the bolts across the slots and their play in the holes. */
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

  /** Adds the position of the part's end. */
  void addEdge() {
    if (limit.part().outline().isPresent() && along != Along.W) {
      addTurned();
      return;
    }
    if (limit.part().row().isPresent()) {
      addRow(limit.part().row().get(), along, far);
      return;
    }
    switch (along) {
      case U -> addAlong(far);
      case V -> addAcross();
      case W -> addHeight();
    }
  }

  /** Turned on a swivel base, every end of a part may be the one that is near. */
  private void addTurned() {
    add("swivel_angles", "swivel_u");
    Optional<VisePart> row = limit.part().row();
    for (boolean end : List.of(false, true)) {
      if (row.isPresent()) {
        addRow(row.get(), Along.U, end);
        addRow(row.get(), Along.V, end);
      } else {
        addAlong(end);
      }
    }
    if (row.isEmpty()) {
      addAcross();
    }
  }

  private void addRow(VisePart part, Along along, boolean far) {
    String edge = along.name().toLowerCase(java.util.Locale.ROOT) + (far ? "_max" : "_min");
    String end = isOpen() ? "_open" : "_closed";
    add((along == Along.U ? edge + end : edge) + " of " + part.name());
  }

  private void addAlong(boolean far) {
    switch (limit.part().role()) {
      case BASE, BODY -> add(far ? "front_reach" : "rear_reach");
      case FIXED_JAW -> {
        if (!far) {
          add("fixed_jaw_thickness");
        }
      }
      case MOVING_JAW, FRONT_JAW -> jaw(far);
      case REAR_JAW -> jaw(!far);
      case SCREW_REAR -> {
        add("rear_reach");
        if (!far) {
          add(isOpen() ? "rear_projection_open" : "rear_projection_closed");
        }
      }
      case SCREW_FRONT -> {
        add("front_reach");
        if (far) {
          add(frontProjection());
        }
      }
      case HANDLE -> {
        add("front_reach", frontProjection());
        if (far) {
          add("handle_depth");
        }
      }
      case ROW, WORK, BOLT, CLAMP -> addBolts();
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
    switch (limit.part().role()) {
      case BASE, BODY -> add("half of base_width");
      case FIXED_JAW, MOVING_JAW, FRONT_JAW, REAR_JAW -> add("half of " + wider());
      case SCREW_REAR, SCREW_FRONT -> add("half of screw_diameter");
      case HANDLE -> add("handle_radius");
      case ROW, WORK, BOLT, CLAMP -> addBolts();
    }
  }

  private void addHeight() {
    switch (limit.part().role()) {
      case BASE, BODY -> {
        if (far) {
          add("bed_height");
        }
      }
      case FIXED_JAW, MOVING_JAW, FRONT_JAW, REAR_JAW -> {
        add("bed_height");
        if (far) {
          add(taller());
        }
      }
      case SCREW_REAR, SCREW_FRONT -> add("screw_height", "half of screw_diameter");
      case HANDLE -> {
        boolean hangs = vise.handle().fullSwing() || limit.situation() == Situation.CUTTING;
        add("screw_height", far || hangs ? "handle_radius" : "half of screw_diameter");
      }
      case ROW, WORK, BOLT, CLAMP -> {
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

  private String frontProjection() {
    return isOpen() ? "front_projection_open" : "front_projection_closed";
  }

  /** Whether the open end of the range of openings is the limiting one. */
  private boolean isOpen() {
    return limit.opening() == JawEnd.OPEN;
  }

  private void add(String... names) {
    readings.addAll(List.of(names));
  }
}
