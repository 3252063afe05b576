package org.jawroom.tables.cell;

/**
 * A cell that cannot be read. The message continues the text found, quoted: {@code "1,250"}
 * <i>could be 1.25 or 1250; write 1250 or 1.25</i>.
 */
public final class BadCell extends Exception {
  private static final long serialVersionUID = 1L;

  public BadCell(String message) {
    super(message);
  }
}
