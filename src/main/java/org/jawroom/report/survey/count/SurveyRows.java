package org.jawroom.report.survey.count;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.rows.PairingCells;
import org.jawroom.report.rows.PairingCells.Columns;
import org.jawroom.report.rows.PairingRows;
import org.jawroom.report.rows.UnreadablePairings;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.selection.BitmapBackedSelection;
import tech.tablesaw.selection.Selection;

/** The rows of a report, column by column: those that every survey needs, and those asked for. */
public final class SurveyRows implements PairingRows.CellsTaker {
  static final String MACHINE = "machine";
  static final String VISE = "vise";
  static final String VERDICT = "verdict";
  static final String MARGIN = "margin_mm";
  static final String GUARD = "limited_by";
  static final String PART = "limiting_part";

  private static final List<String> ALWAYS = List.of(MACHINE, VISE, VERDICT, MARGIN, GUARD, PART);
  private static final Set<String> STANDING =
      Set.of(Verdict.FITS.code(), Verdict.AWKWARD.code(), Verdict.LIMITED.code());

  /** Columns that reports of earlier versions lack; each may keep a vise from serving. */
  private static final String DOUBT = "in_doubt";

  private static final String LOAD_LEFT = "load_left_kg";
  private static final String OVER_JAWS = "room_over_jaws_mm";

  private final Columns columns;
  private final long comfort;
  private final Map<String, StringColumn> texts = new LinkedHashMap<>();
  private final Map<String, LongColumn> lengths = new LinkedHashMap<>();
  private final Selection standing = new BitmapBackedSelection();
  private final Selection comfortable = new BitmapBackedSelection();
  private int size;

  /**
   * Starts without rows.
   *
   * @param columns of the file, which has all that {@code asked} names
   */
  public SurveyRows(Columns columns, Asked asked) {
    this.columns = columns;
    comfort = asked.comfort();
    Set<String> kept = new LinkedHashSet<>(ALWAYS);
    kept.addAll(asked.columns());
    for (String name : kept) {
      if (Columns.isLength(name)) {
        lengths.put(name, LongColumn.create(name));
      } else {
        texts.put(name, StringColumn.create(name));
      }
    }
  }

  @Override
  public void take(PairingCells cells) throws UnreadablePairings {
    // A row is checked before any of its cells is kept.
    Verdict verdict = cells.verdict();
    cells.filled(MACHINE);
    cells.filled(VISE);
    OptionalLong margin = cells.millimetres(MARGIN);
    if (!cells.text(GUARD).isEmpty()) {
      cells.filled(PART);
      if (margin.isEmpty()) {
        throw cells.fault(MARGIN, "is blank, but " + GUARD + " is not");
      }
    }
    for (Map.Entry<String, LongColumn> column : lengths.entrySet()) {
      OptionalLong length = cells.millimetres(column.getKey());
      if (length.isPresent()) {
        column.getValue().append(length.getAsLong());
      } else {
        column.getValue().appendMissing();
      }
    }
    texts.forEach((name, column) -> column.append(cells.text(name)));
    if (STANDING.contains(verdict.code()) && isOfUse(cells)) {
      standing.add(size);
      if (margin.isPresent()
          && margin.getAsLong() >= comfort
          && (!columns.has(DOUBT) || cells.text(DOUBT).isEmpty())) {
        comfortable.add(size);
      }
    }
    size++;
  }

  /** What the solver asks of a vise that stands, too: the load, and room over the jaws. */
  private boolean isOfUse(PairingCells cells) throws UnreadablePairings {
    boolean tooHeavy =
        columns.has(LOAD_LEFT)
            && cells.kilograms(LOAD_LEFT).filter(left -> left.signum() < 0).isPresent();
    return !tooHeavy && !(columns.has(OVER_JAWS) && cells.millimetres(OVER_JAWS).orElse(1) <= 0);
  }

  int size() {
    return size;
  }

  /** The rows whose vise is of use on its machine. */
  Selection standing() {
    return standing;
  }

  /** Of these the rows with a comfortable margin and no reading in doubt. */
  Selection comfortable() {
    return comfortable;
  }

  String machine(int row) {
    return text(MACHINE, row);
  }

  String vise(int row) {
    return text(VISE, row);
  }

  /** A cell of a column of texts; empty if it is blank. */
  String text(String column, int row) {
    return texts.get(column).get(row);
  }

  /** A cell of a column of lengths. */
  OptionalLong length(String column, int row) {
    LongColumn cells = lengths.get(column);
    return cells.isMissing(row) ? OptionalLong.empty() : OptionalLong.of(cells.getLong(row));
  }

  OptionalLong margin(int row) {
    return length(MARGIN, row);
  }

  /** Whether {@code column} holds lengths. */
  boolean isLength(String column) {
    return lengths.containsKey(column);
  }

  /** The different texts of a column that was asked for. */
  public Set<String> words(String column) {
    return isLength(column) ? Set.of() : texts.get(column).asSet();
  }

  /** The rows that all of {@code conditions} choose. */
  Selection chosen(List<Condition> conditions) {
    Selection chosen = Selection.withRange(0, size);
    for (Condition condition : conditions) {
      chosen.and(
          isLength(condition.column())
              ? chosenLengths(condition)
              : chosenTexts(texts.get(condition.column()), condition));
    }
    return chosen;
  }

  private static Selection chosenTexts(StringColumn column, Condition condition) {
    boolean equal = condition.relation() == Condition.Relation.EQUAL;
    if (condition.text().isEmpty()) {
      return equal ? column.isMissing() : column.isNotMissing();
    }
    return equal ? column.isEqualTo(condition.text()) : column.isNotEqualTo(condition.text());
  }

  /** In whole numbers; the library would compare as doubles, and a blank as the least of all. */
  private Selection chosenLengths(Condition condition) {
    LongColumn column = lengths.get(condition.column());
    Selection chosen = new BitmapBackedSelection();
    for (int row = 0; row < size; row++) {
      if (column.isMissing(row)
          ? condition.choosesBlank()
          : condition.chooses(column.getLong(row))) {
        chosen.add(row);
      }
    }
    return chosen;
  }
}
