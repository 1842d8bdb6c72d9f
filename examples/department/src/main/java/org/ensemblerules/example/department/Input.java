package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import org.ensemblerules.source.Printable;
import org.ensemblerules.tables.JsonLines;

/** Opens what a command reads: a file, or the standard input. All commands read through it. */
final class Input {
  /** What stands for the standard input. */
  static final String STANDARD_INPUT = "-";

  // Where the standard input itself can be looked at; where there is no such place, it cannot.
  private static final Path STANDARD_INPUT_FILE = Path.of("/dev/stdin");

  private Input() {}

  /** Opens a file, or the standard input, line by line. */
  static <T> JsonLines<T> open(String file, InputStream standardInput, JsonLines.Reading<T> reading)
      throws IOException {
    return JsonLines.of(
        name(file), file.equals(STANDARD_INPUT) ? standardInput : stream(file), reading);
  }

  /** What a file is called in what is said of it. */
  static String name(String file) {
    return file.equals(STANDARD_INPUT) ? "standard input" : file;
  }

  private static InputStream stream(String file) throws IOException {
    Path path = path(file);
    if (Files.isDirectory(path)) {
      throw new IOException("cannot read " + file + ": it is a folder");
    }
    try {
      return Files.newInputStream(path);
    } catch (FileSystemException e) {
      throw new IOException("cannot read " + file + ": " + Failures.why(e), e);
    }
  }

  /**
   * Reads a whole file of text. Only as much is read as is allowed, whatever its size is said to
   * be.
   *
   * @throws BadFileException if it is longer, or not in UTF-8
   */
  static String text(String file, int mostBytes) throws IOException {
    byte[] bytes;
    try (InputStream stream = stream(file)) {
      bytes = stream.readNBytes(mostBytes + 1);
    }
    if (bytes.length > mostBytes) {
      long size = Files.size(path(file));
      throw new BadFileException(
          List.of(
              Printable.of(file)
                  + "#: found "
                  + (size > mostBytes ? size : "more than " + mostBytes)
                  + " bytes, allowed: at most "
                  + mostBytes));
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new IOException("cannot read " + file + ": not in UTF-8", e);
    }
  }

  private static Path path(String file) throws IOException {
    try {
      return Path.of(file);
    } catch (InvalidPathException e) {
      throw new IOException("cannot read " + file + ": no name of a file", e);
    }
  }

  /** Tells whether a file to write is one that is read, as far as that can be known. */
  static boolean isAlso(String file, Path written) throws IOException {
    return isSame(file.equals(STANDARD_INPUT) ? STANDARD_INPUT_FILE : path(file), written);
  }

  /** Tells whether two names are names of one file. */
  static boolean isSame(Path one, Path other) throws IOException {
    if (Files.exists(one) && Files.exists(other)) {
      // A device, such as that of nothing, may be read and written.
      return Files.isRegularFile(one) && Files.isSameFile(one, other);
    }
    return one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }
}
