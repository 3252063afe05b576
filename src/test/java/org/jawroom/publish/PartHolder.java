package org.jawroom.publish;

import java.io.IOException;
import java.nio.file.Path;

/** Writes a file that is not in its place yet, until it is killed. */
final class PartHolder {
  private PartHolder() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    try (PartFile part = new PartFile(Path.of(args[0]), Path.of("report"))) {
      System.out.print(part.isTaken() ? '?' : '!');
      System.out.flush();
      Thread.sleep(600_000);
    }
  }
}
