package org.jawroom.report.survey;

import java.util.List;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.jawroom.report.xlsx.ListSheet.Heading;

/**
 * A list of a survey.
 *
 * @param remark what the figures mean
 * @param size the number of entries
 * @param entries the cells of each, from 0, one for each heading; made when they are printed, since
 *     there may be a million
 */
record Listing(
    String title,
    String remark,
    List<Heading> headings,
    int size,
    IntFunction<List<SurveyCell>> entries) {

  static <T> Listing of(
      String title,
      String remark,
      List<Heading> headings,
      List<T> all,
      Function<T, List<SurveyCell>> cells) {
    return new Listing(title, remark, headings, all.size(), i -> cells.apply(all.get(i)));
  }
}
