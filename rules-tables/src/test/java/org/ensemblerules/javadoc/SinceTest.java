package org.ensemblerules.javadoc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each type that users see says in which version it came. */
class SinceTest {
  private static final Pattern PUBLIC =
      Pattern.compile("^public (?:[\\w-]+ )*(?:class|interface|enum|record) ", Pattern.MULTILINE);
  private static final Pattern SINCE =
      Pattern.compile("^ \\* @since \\d+\\.\\d+$", Pattern.MULTILINE);

  @ParameterizedTest
  @ValueSource(strings = {"../rules-core", "", "audit"})
  void eachExportedTypeSaysSinceWhen(String artifact) throws IOException {
    List<Path> open = new ArrayList<>();
    List<Path> silent = new ArrayList<>();
    for (Path folder : ExportedSources.of(Path.of(artifact))) {
      for (Path file : javaFiles(folder)) {
        String text = Files.readString(file);
        if (PUBLIC.matcher(text).find()) {
          open.add(file);
          if (!SINCE.matcher(text).find()) {
            silent.add(file);
          }
        }
      }
    }
    assertThat(open).hasSizeGreaterThan(20);
    assertThat(silent).isEmpty();
  }

  private static List<Path> javaFiles(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList();
    }
  }
}
