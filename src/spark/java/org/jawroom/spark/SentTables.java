package org.jawroom.spark;

import java.io.IOException;
import java.io.Serializable;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jawroom.app.input.Input;
import org.jawroom.publish.Scratch;
import org.jawroom.shop.Shop;
import org.jawroom.tables.Reading;
import org.jawroom.tables.source.grid.FileRead;
import org.jawroom.tables.source.grid.UnreadableInput;

/**
 * The bytes of the tables, as Spark sends them to every executor, and the shop that each executor
 * reads from them once. The bytes are those that were read without a fault, so that every executor
 * has the same shop, marks of checks included.
 */
final class SentTables implements Serializable {
  private static final long serialVersionUID = 1;

  private final boolean workbook;
  private final ArrayList<String> names = new ArrayList<>();
  private final ArrayList<byte[]> files = new ArrayList<>();
  private transient Catalogue catalogue;

  private SentTables(boolean workbook) {
    this.workbook = workbook;
  }

  /**
   * Takes the files that were read from {@code input}.
   *
   * @throws UnreadableInput if one cannot be read again, or is no longer what was read
   */
  static SentTables of(Path input, Reading reading) throws UnreadableInput {
    SentTables sent = new SentTables(!Files.isDirectory(input));
    List<Path> paths = Input.files(input, reading);
    for (int i = 0; i < paths.size(); i++) {
      FileRead read = reading.files().get(i);
      byte[] bytes = FileRead.bytes(paths.get(i), Input.heap());
      if (!FileRead.of(read.name(), bytes).equals(read)) {
        throw new UnreadableInput(paths.get(i) + " was changed while it was read; run again");
      }
      sent.names.add(read.name());
      sent.files.add(bytes);
    }
    return sent;
  }

  /** What the tables hold; read at the first call. */
  synchronized Catalogue catalogue() throws IOException, UnreadableInput {
    if (catalogue == null) {
      catalogue = Catalogue.of(shop());
    }
    return catalogue;
  }

  private Shop shop() throws IOException, UnreadableInput {
    Path folder = Scratch.directory("tables");
    List<Path> copies = new ArrayList<>();
    try {
      for (int i = 0; i < names.size(); i++) {
        copies.add(Files.write(folder.resolve(names.get(i)), files.get(i)));
      }
      Reading reading = Input.read(workbook ? copies.get(0) : folder, Map.of());
      return reading.shop().orElseThrow(() -> new IllegalStateException(reading.faults() + ""));
    } finally {
      for (Path copy : copies) {
        Files.delete(copy);
      }
      Files.delete(folder);
    }
  }
}
