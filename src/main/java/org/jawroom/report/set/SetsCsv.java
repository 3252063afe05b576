package org.jawroom.report.set;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jawroom.placement.search.Recommendation;
import org.jawroom.placement.set.SetOutcome;
import org.jawroom.publish.ReportKind;
import org.jawroom.report.csv.CsvReport;
import org.jawroom.report.format.Figures;
import org.jawroom.report.format.PlainText;
import org.jawroom.report.format.ReportMarks;
import org.jawroom.report.format.Rounding;
import org.jawroom.shop.vise.Vise;

/**
 * {@code sets.csv}: one row for each set on each machine on which it is to stand, in codes and
 * millimetres.
 *
 * <p>{@code arrangement} lists the vises from left to right (slots along y: front to back), {@code
 * ;} between: name, where the handle points, mount (its spaces as {@code _}), x and y of the vise
 * frame's origin. {@code limited_by} lists what keeps a set from fitting: {@code no mount: VISE,
 * VISE}, {@code no place: VISE}, {@code side by side}, {@code ;} between.
 */
public final class SetsCsv {

  /** The name of the file. */
  public static final String FILE = "sets.csv";

  private static final List<String> HEADER =
      List.of("set", "machine", "fits", "least_mm", "arrangement", "limited_by");

  public static final ReportKind KIND = ReportMarks.csv(HEADER);

  private SetsCsv() {}

  /** Writes all rows in the order given; does not close {@code out}. */
  public static void write(List<SetOutcome> sets, OutputStream out) throws IOException {
    CsvReport report = new CsvReport(out, HEADER);
    for (SetOutcome set : sets) {
      report.row(
          List.of(
              PlainText.harmless(set.set().name()),
              PlainText.harmless(set.machine().name()),
              set.fits().name().toLowerCase(Locale.ROOT),
              CsvReport.down(set.least()),
              set.stands().stream().map(SetsCsv::stand).collect(Collectors.joining("; ")),
              set.hindrances().stream().map(SetsCsv::hindrance).collect(Collectors.joining("; "))));
    }
    report.finish();
  }

  private static String stand(SetOutcome.Stand stand) {
    Recommendation place = stand.place();
    return String.join(
        " ",
        PlainText.harmless(stand.vise().name()),
        place.handleTo().word(),
        PlainText.harmless(place.mount().replace(' ', '_')),
        Figures.millimetres(place.x(), Rounding.NEAREST),
        Figures.millimetres(place.y(), Rounding.NEAREST));
  }

  private static String hindrance(SetOutcome.Hindrance hindrance) {
    String vises =
        hindrance.vises().stream()
            .map(Vise::name)
            .map(PlainText::harmless)
            .collect(Collectors.joining(", "));
    return switch (hindrance.kind()) {
      case NO_MOUNT -> "no mount: " + vises;
      case NO_PLACE -> "no place: " + vises;
      case SIDE_BY_SIDE -> "side by side";
    };
  }
}
