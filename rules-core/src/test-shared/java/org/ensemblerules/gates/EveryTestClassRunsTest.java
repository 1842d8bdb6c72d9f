package org.ensemblerules.gates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.AnnotatedElement;
import java.net.URISyntaxException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.PathMatcher;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;
import org.junit.platform.commons.support.AnnotationSupport;

/** A test class whose name Surefire does not look for is skipped in silence; here it fails. */
class EveryTestClassRunsTest {
  /** Set by the build from the same property that Surefire's includes are read from. */
  private static final String INCLUDES = "tests.includes";

  @Test
  void everyClassWithTestsHasANameThatIsRun() throws Exception {
    String includes =
        Objects.requireNonNull(
            System.getProperty(INCLUDES), "system property " + INCLUDES + ": run through Maven");
    assertThat(notRun(compiledTestClasses(), includes))
        .as("classes with tests whose name matches none of %s", includes)
        .isEmpty();
  }

  /** The guard itself can fail: this class is not named *Properties. */
  @Test
  void aClassOfAnotherNameIsNamed() {
    assertThat(notRun(List.of(EveryTestClassRunsTest.class), "**/*Properties.java"))
        .containsExactly("org.ensemblerules.gates.EveryTestClassRunsTest");
    assertThat(notRun(List.of(EveryTestClassRunsTest.class), "**/*Properties.java, **/*Test.java"))
        .isEmpty();
  }

  private static List<String> notRun(List<Class<?>> classes, String includes) {
    List<PathMatcher> matchers =
        Arrays.stream(includes.split(",", -1))
            .map(include -> FileSystems.getDefault().getPathMatcher("glob:" + include.strip()))
            .toList();
    return classes.stream()
        .filter(EveryTestClassRunsTest::hasTests)
        .filter(type -> matchers.stream().noneMatch(m -> m.matches(sourceOf(type))))
        .map(Class::getName)
        .toList();
  }

  /** Every annotation of every engine in use is itself marked {@link Testable}. */
  private static boolean hasTests(Class<?> type) {
    Stream<AnnotatedElement> members =
        Stream.concat(
            Arrays.stream(type.getDeclaredMethods()), Arrays.stream(type.getDeclaredFields()));
    return members.anyMatch(member -> AnnotationSupport.isAnnotated(member, Testable.class));
  }

  /** The source file, below a folder so that a leading double star matches the root package too. */
  private static Path sourceOf(Class<?> type) {
    Class<?> outermost = type;
    while (outermost.getEnclosingClass() != null) {
      outermost = outermost.getEnclosingClass();
    }
    return Path.of("tests", outermost.getName().replace('.', '/') + ".java");
  }

  private static List<Class<?>> compiledTestClasses()
      throws IOException, URISyntaxException, ClassNotFoundException {
    Path root =
        Path.of(
            EveryTestClassRunsTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
    List<String> names;
    try (Stream<Path> files = Files.walk(root)) {
      names =
          files
              .map(file -> root.relativize(file).toString())
              .filter(name -> name.endsWith(".class") && !name.endsWith("-info.class"))
              .map(name -> name.substring(0, name.length() - ".class".length()))
              .map(name -> name.replace('/', '.').replace('\\', '.'))
              .sorted()
              .toList();
    }
    List<Class<?>> classes = new ArrayList<>();
    for (String name : names) {
      classes.add(Class.forName(name, false, EveryTestClassRunsTest.class.getClassLoader()));
    }
    return classes;
  }
}
