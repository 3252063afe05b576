package org.jawroom.report.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobRowsTest {

  /** More rows than are held in memory: five megabytes of each job, in batches of unequal size. */
  @Test
  void rows_ofManyPairings_comeJobByJobInOrder() throws IOException {
    List<StringBuilder> expected = List.of(new StringBuilder(), new StringBuilder());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JobRows rows = new JobRows(expected.size())) {
      for (int batch = 0; expected.get(0).length() < 5_000_000; batch++) {
        List<byte[]> some = new ArrayList<>();
        for (int job = 0; job < expected.size(); job++) {
          String text = ("job " + job + ", batch " + batch + "\r\n").repeat(1 + batch % 3000);
          expected.get(job).append(text);
          some.add(text.getBytes(StandardCharsets.UTF_8));
        }
        rows.add(some);
      }
      rows.writeTo(out);
    }
    assertEquals(
        new String(JobsCsv.header(), StandardCharsets.UTF_8) + expected.get(0) + expected.get(1),
        out.toString(StandardCharsets.UTF_8));
  }

  @Test
  void rows_ofNone_areTheHeaderAlone() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (JobRows rows = new JobRows(3)) {
      rows.writeTo(out);
    }
    assertEquals(
        new String(JobsCsv.header(), StandardCharsets.UTF_8), out.toString(StandardCharsets.UTF_8));
  }
}
