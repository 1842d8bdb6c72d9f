package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.ensemblerules.tables.AssessmentLines;

/** Opens a file of assessments, or the standard input. */
final class AssessmentSource {
  /** What stands for the standard input. */
  static final String STANDARD_INPUT = "-";

  private AssessmentSource() {}

  static AssessmentLines open(String file, InputStream standardInput) throws IOException {
    if (file.equals(STANDARD_INPUT)) {
      return AssessmentLines.of("standard input", standardInput);
    }
    Path path = path(file);
    if (Files.isDirectory(path)) {
      throw new IOException("cannot read " + file + ": it is a folder");
    }
    try {
      return AssessmentLines.of(file, Files.newInputStream(path));
    } catch (FileSystemException e) {
      throw new IOException("cannot read " + file + ": " + Failures.why(e), e);
    }
  }

  private static Path path(String file) throws IOException {
    try {
      return Path.of(file);
    } catch (InvalidPathException e) {
      throw new IOException("cannot read " + file + ": no name of a file", e);
    }
  }

  /** Tells whether a file to write is the one that is read. */
  static boolean isAlso(String file, Path written) throws IOException {
    return !file.equals(STANDARD_INPUT)
        && Files.exists(written)
        && Files.exists(path(file))
        && Files.isSameFile(path(file), written);
  }
}
