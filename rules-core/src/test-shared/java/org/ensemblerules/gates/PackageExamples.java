package org.ensemblerules.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The examples that packages and classes show, and the ones that are compiled. */
public final class PackageExamples {
  private static final String DESCRIPTION = "package-info.java";
  private static final String BEGINS = "<pre>{@code";

  private PackageExamples() {}

  /**
   * Tells whether a file is of a package, which must show an example, or of a class that does.
   *
   * @param file a file below the sources
   * @return whether its example is to be looked at
   */
  public static boolean showsOne(Path file) {
    if (!file.toString().endsWith(".java")) {
      return false;
    }
    try {
      return file.endsWith(DESCRIPTION) || Files.readString(file).contains(BEGINS);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Holds the example of a package or a class against the one between the marks with its name,
   * which may be laid out otherwise.
   *
   * @param shown the file that describes the package, or that of the class
   * @param compiled the file with the marks
   */
  public static void isCompiled(Path shown, Path compiled) throws IOException {
    String text = Files.readString(shown);
    String type = shown.getFileName().toString().replace(".java", "");
    String name =
        between("\n" + text, "\npackage ", ";") + (shown.endsWith(DESCRIPTION) ? "" : "." + type);
    String examples = Files.readString(compiled);
    assertThat(code(between(text, BEGINS, "}</pre>").replace("\n *", "\n")))
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
