package org.ensemblerules.tables.set;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a set of table files is read from.
 *
 * @since 0.1
 */
@FunctionalInterface
public interface TableFiles {
  /** How large a file of a set may be, in bytes: 4,000,000. */
  int MOST_BYTES = 4_000_000;

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
   * Reads a set from a folder. A file is measured before it is read, and whatever leads out of the
   * folder, such as a symbolic link, is refused.
   *
   * @param folder the folder that holds {@code index.json}; not null
   * @return the set, whose {@link #read} throws a {@link FileSystemException} for a file that is
   *     larger than {@link #MOST_BYTES} or lies elsewhere; never null
   */
  static TableFiles in(Path folder) {
    Objects.requireNonNull(folder, "folder");
    return path -> {
      Path file = folder.resolve(path);
      if (!Files.isRegularFile(file)) {
        return Optional.empty();
      }
      if (!file.toRealPath().startsWith(folder.toRealPath())) {
        throw new FileSystemException(file.toString(), null, "a link out of the folder of the set");
      }
      requireSmall(file, Files.size(file));
      try (InputStream stream = Files.newInputStream(file)) {
        // It may have grown since, or have no size to tell.
        byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
        requireSmall(file, bytes.length);
        return Optional.of(bytes);
      }
    };
  }

  private static void requireSmall(Path file, long bytes) throws IOException {
    if (bytes > MOST_BYTES) {
      throw new FileSystemException(file.toString(), null, "a file of " + bytes + " bytes");
    }
  }
}
