package org.ensemblerules.tables;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.ensemblerules.tables.set.TableFiles;

/** The sets of table files that tests read: a sound one, and changes that break it. */
public final class FixtureSets {
  private FixtureSets() {}

  public static Path sound() {
    return folder("sets/sound");
  }

  public static Path broken() {
    return folder("sets/broken");
  }

  /** The sound set with the files of a broken one in place of its own. */
  public static TableFiles brokenBy(String name) {
    TableFiles changes = TableFiles.in(broken().resolve(name));
    TableFiles sound = TableFiles.in(sound());
    return path -> {
      var changed = changes.read(path);
      return changed.isPresent() ? changed : sound.read(path);
    };
  }

  public static List<String> brokenNames() {
    try (Stream<Path> folders = Files.list(broken())) {
      return folders.map(folder -> folder.getFileName().toString()).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path folder(String name) {
    try {
      return Path.of(Objects.requireNonNull(FixtureSets.class.getResource(name), name).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }
}
