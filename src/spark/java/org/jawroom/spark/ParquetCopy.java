package org.jawroom.spark;

import static org.apache.spark.sql.functions.col;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.StructType;
import org.jawroom.report.csv.PairingsCsv;
import org.jawroom.report.csv.RemediesCsv;

/**
 * Copies a CSV report into Parquet: millimetres and kilograms as decimals of three places, counts
 * as whole numbers, everything else as text; an empty cell is null. The order of the rows is not
 * kept.
 */
final class ParquetCopy {
  private static final String CSV = ".csv";

  /** All but lists of millimetres. */
  private static final Pattern AMOUNT = Pattern.compile("(?!table_positions).*_(mm|kg)");

  private static final Pattern COUNT = Pattern.compile("per_table");

  private ParquetCopy() {}

  /** Writes {@code OUT/NAME.parquet} from {@code OUT/NAME.csv}. */
  static void write(SparkSession session, String out, String file) throws IOException {
    List<String> header = header(file);
    StructType texts = new StructType();
    for (String name : header) {
      texts = texts.add(name, "string");
    }
    // Quotes within quotes are doubled (RFC 4180).
    Dataset<Row> rows = session.read().schema(texts).option("escape", "\"").csv(out + "/" + file);
    // The first part alone has a header row; no verdict and no remedy is named as its column.
    String third = header.get(2);
    rows.filter(col(third).notEqual(third))
        .select(header.stream().map(ParquetCopy::typed).toArray(Column[]::new))
        .write()
        .parquet(out + "/" + file.replace(CSV, ".parquet"));
  }

  private static List<String> header(String file) throws IOException {
    ByteArrayOutputStream row = new ByteArrayOutputStream();
    if (file.equals(PairingsCsv.FILE)) {
      row.write(PairingsCsv.header());
    } else {
      new RemediesCsv(row, true).finish();
    }
    return List.of(row.toString(StandardCharsets.UTF_8).strip().split(","));
  }

  private static Column typed(String name) {
    if (AMOUNT.matcher(name).matches()) {
      return col(name).cast("decimal(18,3)");
    }
    return COUNT.matcher(name).matches() ? col(name).cast("int") : col(name);
  }
}
