package org.jawroom.tables.schema;

import java.util.List;

/** The means by which a row's numbers were measured; shared by machines and vises. */
final class SourceWord {
  private SourceWord() {}

  static final List<String> WORDS = List.of("drawing", "caliper", "rule", "tape", "brochure");

  static final String HELP =
      "What the numbers were taken with; stands for a tolerance of 0.5 (drawing), 0.5 (caliper),"
          + " 1 (rule), 1.5 (tape) or 5 mm (brochure) unless tolerance is filled.";
}
