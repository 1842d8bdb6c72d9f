package org.ensemblerules.audit;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.List;
import org.ensemblerules.gates.MainClasses;
import org.ensemblerules.gates.PackageOrder;
import org.ensemblerules.gates.Purity;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
  private static final PackageOrder ORDER =
      new PackageOrder(
          "org.ensemblerules.audit",
          List.of(
              "soundness",
              "difference",
              "words",
              "json",
              // The root package itself: the door, which reads all.
              ""));

  private static final JavaClasses CLASSES = MainClasses.all();

  @Test
  void eachPackageReadsOnlyThoseBelowIt() {
    ORDER.eachReadsOnlyThoseBelow().check(CLASSES);
  }

  /** Words are a file of this module, and JSON is written with the library for it. */
  @Test
  void nothingElseIsReadFromOutside() {
    Purity.nothingIsReadFromOutside()
        .check(
            CLASSES.that(
                DescribedPredicate.describe(
                    "answer questions",
                    type ->
                        !List.of("org.ensemblerules.audit.words", "org.ensemblerules.audit.json")
                            .contains(type.getPackageName()))));
  }

  @Test
  void staticFieldsAreFinal() {
    Purity.staticFieldsAreFinal().check(CLASSES);
  }
}
