package org.jawroom.cli.option;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A path argument of the command line. */
public final class PathArgument implements ITypeConverter<Path> {
  @Override
  public Path convert(String text) {
    if (text.isBlank()) {
      // To Java nothing is the current folder; mostly a variable of a script is not set.
      throw new TypeConversionException("is empty; for this folder write .");
    }
    try {
      return Path.of(text);
    } catch (InvalidPathException wrong) {
      throw new TypeConversionException(
          "\"" + text + "\" cannot be the name of a file: " + wrong.getReason());
    }
  }
}
