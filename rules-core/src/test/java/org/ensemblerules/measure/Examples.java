package org.ensemblerules.measure;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads files of worked examples: semicolons between fields, notes after a hash, one heading. */
public final class Examples {
  private Examples() {}

  /**
   * Reads the lines of a file beside a class.
   *
   * @param beside the class
   * @param file the file's name
   * @return the fields of each line below the heading
   */
  public static List<List<String>> read(Class<?> beside, String file) {
    try (InputStream bytes = beside.getResourceAsStream(file)) {
      if (bytes == null) {
        throw new IllegalStateException("no file " + file + " beside " + beside.getName());
      }
      List<List<String>> lines =
          new String(bytes.readAllBytes(), StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.isBlank() && !line.startsWith("#"))
              .map(line -> List.of(line.split(";", -1)))
              .toList();
      return lines.subList(1, lines.size());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
