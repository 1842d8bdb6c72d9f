package org.ensemblerules.gates;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.module.ModuleDescriptor;
import java.lang.module.ModuleDescriptor.Exports;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;

/** The compiled main classes of the module under test, without those of the modules it uses. */
public final class MainClasses {
  // What the processor of the benchmarks writes follows no rules of ours.
  private static final String GENERATED = "/jmh_generated/";

  // Read once: nothing else in a test run takes as long as reading every class.
  private static final JavaClasses ALL =
      new ClassFileImporter()
          .withImportOption(location -> !location.contains(GENERATED))
          .importPath(folder());

  private MainClasses() {}

  /** Every main class of this module. */
  public static JavaClasses all() {
    return ALL;
  }

  /** The packages that this module exports to everyone; none if it is not a named module. */
  public static Set<String> exportedPackages() {
    Path descriptor = folder().resolve("module-info.class");
    if (!Files.exists(descriptor)) {
      return Set.of();
    }
    try (InputStream bytes = Files.newInputStream(descriptor)) {
      return ModuleDescriptor.read(bytes).exports().stream()
          .filter(exports -> !exports.isQualified())
          .map(Exports::source)
          .collect(Collectors.toUnmodifiableSet());
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + descriptor, e);
    }
  }

  /** The packages with classes that this module does not export. */
  public static Set<String> hiddenPackages() {
    Set<String> exported = exportedPackages();
    return all().stream()
        .map(JavaClass::getPackageName)
        .filter(name -> !exported.contains(name))
        .collect(Collectors.toUnmodifiableSet());
  }

  private static Path folder() {
    return Path.of(System.getProperty("tests.main.classes", "target/classes"));
  }
}
