package org.ensemblerules.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import java.util.List;
import java.util.Set;
import org.ensemblerules.gates.MainClasses;
import org.ensemblerules.gates.PackageOrder;
import org.ensemblerules.gates.Purity;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
  private static final PackageOrder ORDER =
      new PackageOrder(
          "org.ensemblerules",
          List.of(
              "source",
              "measure",
              "gear",
              "effect",
              "defect",
              "inspection",
              "fieldcheck",
              "strength",
              "care",
              "repair",
              "history",
              "retirement",
              "schedule",
              "record",
              "ruleset",
              "verdict",
              "assess",
              "issue",
              "fleet",
              "catalog",
              "words",
              // The root package itself: the door, which reads all.
              ""));

  private static final JavaClasses CLASSES = MainClasses.all();

  @Test
  void eachPackageReadsOnlyThoseBelowIt() {
    ORDER.eachReadsOnlyThoseBelow().check(CLASSES);
  }

  @Test
  void onlyTheCombiningPackagesReadARuleSet() {
    ORDER
        .onlyTheseRead(
            "ruleset",
            Set.of("ruleset", "verdict", "assess", "issue", "fleet", "catalog", "words", ""))
        .check(CLASSES);
  }

  @Test
  void nothingIsReadFromOutside() {
    Purity.nothingIsReadFromOutside().check(CLASSES);
  }

  @Test
  void whatCountsIsDecidedOnce() {
    WhatCounts.isDecidedOnce().check(CLASSES);
  }

  @Test
  void staticFieldsAreFinal() {
    Purity.staticFieldsAreFinal().check(CLASSES);
  }
}
