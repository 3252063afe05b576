package org.jawroom.report.compare;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jawroom.clearance.Situation;
import org.jawroom.clearance.gap.JawEnd;
import org.jawroom.placement.pairing.Verdict;
import org.jawroom.report.rows.PairingRow;

/** Serialises {@link PairingRow}s for {@link SortedRecords}. */
final class PairingRecord {
  private static final byte OPEN = 0;
  private static final byte YES = 1;
  private static final byte NO = 2;

  private PairingRecord() {}

  /** The sort key; equal if and only if machine and vise have the same names. */
  static byte[] key(PairingRow row) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    text(out, row.machine());
    text(out, row.vise());
    return bytes.toByteArray();
  }

  static void write(PairingRow row, DataOutputStream out) throws IOException {
    text(out, row.machine());
    text(out, row.vise());
    out.writeByte(row.verdict().ordinal());
    length(out, row.margin());
    length(out, row.bestMargin());
    out.writeBoolean(row.limiting().isPresent());
    if (row.limiting().isPresent()) {
      PairingRow.Limiting limiting = row.limiting().get();
      text(out, limiting.guard());
      text(out, limiting.part());
      out.writeByte(limiting.situation().ordinal());
      out.writeByte(limiting.opening().ordinal());
    }
    length(out, optional(row.usable().map(PairingRow.Usable::from)));
    length(out, optional(row.usable().map(PairingRow.Usable::to)));
    out.writeByte(row.settable().map(yes -> yes ? YES : NO).orElse(OPEN));
    out.writeInt(row.missing().size());
    for (String column : row.missing()) {
      text(out, column);
    }
  }

  static PairingRow read(DataInputStream in) throws IOException {
    String machine = text(in);
    String vise = text(in);
    Verdict verdict = Verdict.values()[in.readByte()];
    OptionalLong margin = length(in);
    OptionalLong best = length(in);
    Optional<PairingRow.Limiting> limiting =
        in.readBoolean()
            ? Optional.of(
                new PairingRow.Limiting(
                    text(in),
                    text(in),
                    Situation.values()[in.readByte()],
                    JawEnd.values()[in.readByte()]))
            : Optional.empty();
    OptionalLong from = length(in);
    OptionalLong to = length(in);
    Optional<PairingRow.Usable> usable =
        from.isPresent()
            ? Optional.of(new PairingRow.Usable(from.getAsLong(), to.getAsLong()))
            : Optional.empty();
    byte settable = in.readByte();
    List<String> missing = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      missing.add(text(in));
    }
    return new PairingRow(
        machine,
        vise,
        verdict,
        margin,
        best,
        limiting,
        usable,
        settable == OPEN ? Optional.empty() : Optional.of(settable == YES),
        missing);
  }

  static DataInputStream in(byte[] bytes) {
    return new DataInputStream(new ByteArrayInputStream(bytes));
  }

  static void text(DataOutputStream out, String text) throws IOException {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  private static String text(DataInputStream in) throws IOException {
    return new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8);
  }

  private static void length(DataOutputStream out, OptionalLong length) throws IOException {
    out.writeBoolean(length.isPresent());
    if (length.isPresent()) {
      out.writeLong(length.getAsLong());
    }
  }

  private static OptionalLong length(DataInputStream in) throws IOException {
    return in.readBoolean() ? OptionalLong.of(in.readLong()) : OptionalLong.empty();
  }

  private static OptionalLong optional(Optional<Long> length) {
    return length.map(OptionalLong::of).orElseGet(OptionalLong::empty);
  }
}
