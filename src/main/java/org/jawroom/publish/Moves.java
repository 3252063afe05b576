package org.jawroom.publish;

import java.io.IOException;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A series of renames within one folder, with a journal: the list is written before the first
 * rename, so that the next run completes the series if a run dies during it.
 */
final class Moves {

  /** One rename; both names have no folder, and one of them {@link #isOurs is ours}. */
  record Move(String from, String to) {}

  private static final String FILE = ".jawroom-moves";
  private static final String PREFIX = ".jawroom-";

  /** The last line of the journal; without it the journal is truncated and ignored. */
  private static final String END = "end";

  private Moves() {}

  /** The temporary name of a file before or after it is in its place. */
  static String name(long number, String suffix) {
    return PREFIX + number + "." + suffix;
  }

  /** Whether a file name comes from {@link #name} or is that of a journal draft. */
  static boolean isOurs(String name) {
    return name.matches("\\.jawroom-([0-9]+\\.(part|old)|moves\\.part)");
  }

  /** Whether a file name is that of a part file, which a run may still be writing. */
  static boolean isPart(String name) {
    return name.matches("\\.jawroom-[0-9]+\\.part");
  }

  /**
   * Writes the journal, then makes all renames.
   *
   * @throws IOException if one rename failed; the earlier ones are made and the journal stays
   */
  static void make(Path folder, List<Move> moves) throws IOException {
    List<String> lines = new ArrayList<>();
    // Encoded, so that any name is a single word.
    moves.forEach(move -> lines.add(coded(move.from()) + "/" + coded(move.to())));
    lines.add(END);
    Path draft = folder.resolve(FILE + ".part");
    try {
      Files.write(draft, lines, StandardCharsets.UTF_8);
      force(draft);
      rename(draft, folder.resolve(FILE));
    } catch (IOException unwritten) {
      Files.deleteIfExists(draft);
      throw unwritten;
    }
    forceFolder(folder);
    finish(folder);
  }

  /** Removes the journal of renames of which none was made. */
  static void forget(Path folder) throws IOException {
    Files.deleteIfExists(folder.resolve(FILE));
  }

  /** Completes the renames in the journal of an earlier run, if there is one. */
  static void finish(Path folder) throws IOException {
    Path file = folder.resolve(FILE);
    List<String> lines;
    try {
      lines = Files.readAllLines(file, StandardCharsets.UTF_8);
    } catch (NoSuchFileException nothing) {
      return;
    }
    for (Move move : read(file, lines)) {
      Path from = folder.resolve(move.from());
      if (Files.exists(from, LinkOption.NOFOLLOW_LINKS)) {
        rename(from, folder.resolve(move.to()));
      }
    }
    forceFolder(folder);
    Files.delete(file);
  }

  /** Rejects names with a folder, so that a forged journal cannot move files between folders. */
  private static List<Move> read(Path file, List<String> lines) throws IOException {
    List<Move> moves = new ArrayList<>();
    boolean sound = !lines.isEmpty() && lines.get(lines.size() - 1).equals(END);
    for (String line : lines.subList(0, Math.max(0, lines.size() - 1))) {
      List<String> names = Arrays.stream(line.split("/", -1)).map(Moves::decoded).toList();
      sound &= names.size() == 2 && names.stream().allMatch(Moves::isPlain);
      sound &= names.stream().filter(Moves::isOurs).count() >= 1;
      if (sound) {
        moves.add(new Move(names.get(0), names.get(1)));
      }
    }
    if (!sound) {
      throw new FileSystemException(
          file.toString(), null, "is not as jawroom writes it; look at it, and take it away");
    }
    return moves;
  }

  private static boolean isPlain(String name) {
    try {
      Path path = Path.of(name);
      return path.getRoot() == null
          && path.getNameCount() == 1
          && path.toString().equals(name)
          && !List.of("", ".", "..").contains(name);
    } catch (InvalidPathException noName) {
      return false;
    }
  }

  private static String coded(String name) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8);
  }

  private static String decoded(String word) {
    try {
      return URLDecoder.decode(word, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException notCoded) {
      return "";
    }
  }

  /** Forces the content to the disk, so that the renames survive a power failure. */
  static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  private static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notEverySystemOpensFolders) {
      return;
    }
  }

  private static void rename(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException notHere) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    } catch (FileSystemException refused) {
      // The message names the final name, since the user does not know the temporary one.
      throw refused.getReason() == null
          ? refused
          : new FileSystemException(to.toString(), null, refused.getReason());
    }
  }
}
