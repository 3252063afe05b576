package org.jawroom.spark;

import org.apache.hadoop.io.Text;
import org.apache.hadoop.mapred.lib.MultipleTextOutputFormat;

/** Writes the rows of each report into a folder of its name, a part for each slice. */
public final class CsvParts extends MultipleTextOutputFormat<String, Text> {

  @Override
  protected String generateFileNameForKeyValue(String report, Text rows, String part) {
    return report + "/" + part;
  }

  /** Only the rows are written. */
  @Override
  protected String generateActualKey(String report, Text rows) {
    return null;
  }
}
