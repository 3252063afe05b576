package org.jawroom.shop.value;

/**
 * The columns that may be blank and then make a pairing, or a job on it, unknown. The order is that
 * of the reports: tables in input order, columns in table order.
 */
public enum Column {
  SLOT_WIDTH("machines", "slot_width"),
  SLOT_PITCH("machines", "slot_pitch"),
  FRONT_GAP("machines", "front_gap"),
  REAR_GAP("machines", "rear_gap"),
  LEFT_GAP("machines", "left_gap"),
  RIGHT_GAP("machines", "right_gap"),
  NOSE_MIN("machines", "nose_min"),
  NOSE_MAX("machines", "nose_max"),
  MAX_LOAD("machines", "max_load"),
  GUARD_GAP("guards", "gap"),
  BASE_WIDTH("vises", "base_width"),
  REAR_REACH("vises", "rear_reach"),
  FRONT_REACH("vises", "front_reach"),
  FIXED_JAW_THICKNESS("vises", "fixed_jaw_thickness"),
  MOVING_JAW_THICKNESS("vises", "moving_jaw_thickness"),
  REAR_PROJECTION_CLOSED("vises", "rear_projection_closed"),
  REAR_PROJECTION_OPEN("vises", "rear_projection_open"),
  FRONT_PROJECTION_CLOSED("vises", "front_projection_closed"),
  FRONT_PROJECTION_OPEN("vises", "front_projection_open"),
  SCREW_HEIGHT("vises", "screw_height"),
  SCREW_DIAMETER("vises", "screw_diameter"),
  HANDLE_RADIUS("vises", "handle_radius"),
  HANDLE_DEPTH("vises", "handle_depth"),
  BOLT_SPACING("vises", "bolt_spacing"),
  BOLT_U("vises", "bolt_u"),
  BOLT_HOLE_U("vises", "bolt_hole_u"),
  BOLT_HOLE_V("vises", "bolt_hole_v"),
  VISE_MASS("vises", "mass"),
  HOLE_U("mounts", "hole_u"),
  HOLE_V("mounts", "hole_v"),
  JOB_MASS("jobs", "mass"),
  TOOL_LENGTH("jobs", "tool_length");

  private final String table;
  private final String column;

  Column(String table, String column) {
    this.table = table;
    this.column = column;
  }

  public String table() {
    return table;
  }

  public String column() {
    return column;
  }

  /** The form printed in reports: {@code machines.rear_gap}. */
  public String path() {
    return table + "." + column;
  }
}
