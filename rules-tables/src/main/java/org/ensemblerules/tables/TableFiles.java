package org.ensemblerules.tables;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/** Where a set of table files is read from. */
@FunctionalInterface
public interface TableFiles {
  /**
   * Reads a file whole.
   *
   * @param path its path in the set, as in {@code trade/edition.json}, with forward slashes and no
   *     dots but that before {@code json}; not null
   * @return its bytes; empty if there is no such file
   * @throws IOException if it is there and cannot be read
   */
  Optional<byte[]> read(String path) throws IOException;

  /**
   * Reads a set from a folder.
   *
   * @param folder the folder that holds {@code index.json}; not null
   * @return the set; never null
   */
  static TableFiles in(Path folder) {
    Objects.requireNonNull(folder, "folder");
    return path -> {
      Path file = folder.resolve(path);
      return Files.isRegularFile(file) ? Optional.of(Files.readAllBytes(file)) : Optional.empty();
    };
  }
}
