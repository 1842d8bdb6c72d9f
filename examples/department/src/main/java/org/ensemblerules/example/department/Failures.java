package org.ensemblerules.example.department;

import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** Says why a file cannot be used; the messages of the JDK name only the file. */
final class Failures {
  private Failures() {}

  static String why(FileSystemException failure) {
    if (failure instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (failure instanceof AccessDeniedException) {
      return "access denied";
    }
    String reason = failure.getReason();
    return reason == null ? failure.getClass().getSimpleName() : reason;
  }
}
