package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Names, codes, rows and pages are spelled as in the United States. The stems are those on which
 * the word lists {@code american-english} and {@code british-english} of SCOWL differ.
 */
class SpellingTest {
  private static final Pattern BRITISH =
      Pattern.compile(
          "speciali[s]|saniti[s](e|i)|organi[s]a|recogni[s]|analy[s]e|steri[l]is|neutrali[s]|minimi[s]e"
              + "|maximi[s]e|authori[s](e|a)|standardi[s]|fib[r]e|colo[u]r|favo[u]r"
              + "|behavio[u]r|neighbo[u]r|harbo[u]r|labo[u]r|mo[u]ld|met[r]e(s|_|\\b)|lit[r]e"
              + "|cent[r]e(d|s|\\b)|label[l]ed|label[l]ing|travel[l]ed|cancel[l]ed|model[l]ed"
              + "|judge[m]ent|licen[c]e|defen[c]e|offen[c]e|practi[s]e|program[m]e(s|\\b)"
              + "|\\bg[r]ey\\b|fulfi[l](s|\\b)|(?-i:[aA]fterward[s]|AFTERWARD[S])|alumini[u]m|catalog[u]e",
          Pattern.CASE_INSENSITIVE);

  // A library of the tests spells its own names; a misspelled name is what two fixtures are about.
  private static final List<String> OTHERS =
      List.of(
          "UnitConversionProperties.java",
          "instructions-beyond-washes",
          "SpellingTest.java",
          "LICENSE.txt");

  @Tag("slow")
  @Test
  void everyFileIsSpelledTheAmericanWay() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path root : roots()) {
      try (Stream<Path> files = Files.walk(root)) {
        for (Path file : files.filter(SpellingTest::read).sorted().toList()) {
          look(file, found);
        }
      }
    }
    assertThat(found).isEmpty();
  }

  private static List<Path> roots() {
    Path top = Path.of("..");
    return List.of(
        top.resolve("docs"),
        top.resolve("README.md"),
        top.resolve("DEVELOPERS.md"),
        top.resolve("rules-core/src"),
        top.resolve("rules-tables/src"),
        top.resolve("examples/department/src"));
  }

  private static boolean read(Path file) {
    String name = file.getFileName().toString();
    return Files.isRegularFile(file)
        && name.matches(".*\\.(java|json|jsonl|md|csv|txt|faults)")
        && OTHERS.stream().noneMatch(name::startsWith)
        && !file.toString().contains("ReadersFuzzTestInputs");
  }

  private static void look(Path file, List<String> found) throws IOException {
    Matcher british = BRITISH.matcher(file.getFileName() + "\n" + Files.readString(file));
    while (british.find()) {
      found.add(file + ": " + british.group());
    }
  }
}
