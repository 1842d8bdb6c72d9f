package org.ensemblerules.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The examples that packages show, and the ones that are compiled. */
public final class PackageExamples {
  private PackageExamples() {}

  /**
   * Holds the example of a package against the one between the marks with the package's name, which
   * may be laid out otherwise.
   *
   * @param description the file that describes the package
   * @param compiled the file with the marks
   */
  public static void isCompiled(Path description, Path compiled) throws IOException {
    String text = Files.readString(description);
    String name = between(text, "\npackage ", ";");
    String examples = Files.readString(compiled);
    assertThat(code(between(text, "<pre>{@code", "}</pre>").replace("\n *", "\n")))
        .as(name)
        .isEqualTo(code(between(examples, "// " + name + " begins", "// " + name + " ends")));
  }

  private static String between(String text, String begins, String ends) {
    assertThat(text).contains(begins, ends);
    int from = text.indexOf(begins) + begins.length();
    return text.substring(from, text.indexOf(ends, from));
  }

  private static String code(String code) {
    return code.replaceAll("\\s+", "");
  }
}
