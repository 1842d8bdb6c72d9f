package org.ensemblerules.javadoc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The folders of the packages that an artifact exports to everyone, as its module says. */
final class ExportedSources {
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Pattern EXPORTED = Pattern.compile("exports ([\\w.]+);");

  private ExportedSources() {}

  static List<Path> of(Path artifact) throws IOException {
    Path sources = artifact.resolve(SOURCES);
    List<Path> all = new ArrayList<>();
    Matcher exported = EXPORTED.matcher(Files.readString(sources.resolve("module-info.java")));
    while (exported.find()) {
      all.add(sources.resolve(exported.group(1).replace('.', '/')));
    }
    return all;
  }
}
