package org.jawroom.tables.source.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystemLoopException;
import org.junit.jupiter.api.Test;

class FileTroubleTest {
  @Test
  void reason_neverHoldsTheName() {
    String name = "/shop/machines.csv";
    assertEquals("access denied", FileTrouble.reason(new AccessDeniedException(name)));
    assertEquals("file system loop", FileTrouble.reason(new FileSystemLoopException(name)));
    assertEquals("directory not empty", FileTrouble.reason(new DirectoryNotEmptyException(name)));
    assertEquals(
        "Input/output error",
        FileTrouble.reason(new FileSystemException(name, null, "Input/output error")));
    assertEquals("disk full", FileTrouble.reason(new IOException("disk full")));
    assertEquals("no reason is given", FileTrouble.reason(new IOException()));
  }
}
