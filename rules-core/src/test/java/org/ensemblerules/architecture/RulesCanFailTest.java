package org.ensemblerules.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import java.util.Set;
import org.ensemblerules.architecture.fixtures.elsewhere.Decides;
import org.ensemblerules.architecture.fixtures.elsewhere.Impure;
import org.ensemblerules.architecture.fixtures.elsewhere.InputManager;
import org.ensemblerules.architecture.fixtures.high.Stands;
import org.ensemblerules.architecture.fixtures.low.ReadsUpwards;
import org.ensemblerules.gates.PackageOrder;
import org.ensemblerules.gates.Purity;
import org.ensemblerules.gates.TypeRules;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A rule that cannot fail guards nothing: each is shown what it must report. */
@Tag("slow")
class RulesCanFailTest {
  private static final PackageOrder ORDER =
      new PackageOrder("org.ensemblerules.architecture.fixtures", List.of("low", "high"));

  @Test
  void aPackageThatReadsUpwards() {
    assertThat(faults(ORDER.eachReadsOnlyThoseBelow(), ReadsUpwards.class))
        .isNotEmpty()
        .allSatisfy(fault -> assertThat(fault).contains("low reads high", "ReadsUpwards.above"));
    assertThat(faults(ORDER.eachReadsOnlyThoseBelow(), Stands.class)).isEmpty();
  }

  @Test
  void aPackageOutsideTheOrder() {
    assertThat(faults(ORDER.eachReadsOnlyThoseBelow(), Impure.class))
        .singleElement()
        .asString()
        .contains("Impure", "stands in no package of the order");
  }

  @Test
  void aPackageThatMayNotReadAnother() {
    assertThat(faults(ORDER.onlyTheseRead("high", Set.of("high")), ReadsUpwards.class))
        .isNotEmpty();
    assertThat(faults(ORDER.onlyTheseRead("high", Set.of("high", "low")), ReadsUpwards.class))
        .isEmpty();
  }

  @Test
  void aClassThatReadsTheOutside() {
    List<String> faults = faults(Purity.nothingIsReadFromOutside(), Impure.class);
    assertThat(List.of("today", "reference", "lambda", "chance", "output"))
        .allSatisfy(
            method ->
                assertThat(faults).anySatisfy(fault -> assertThat(fault).contains(method + "()")));
    assertThat(faults).anySatisfy(fault -> assertThat(fault).contains("java.io.PrintStream"));
    assertThat(faults(Purity.nothingIsReadFromOutside(), Stands.class)).isEmpty();
  }

  @Test
  void aClassThatDecidesByItselfWhatCounts() {
    List<String> faults = faults(WhatCounts.isDecidedOnce(), Decides.class);
    assertThat(faults).hasSize(3);
    assertThat(List.of("standing(", "permitted(", "covered("))
        .allSatisfy(
            method -> assertThat(faults).anySatisfy(fault -> assertThat(fault).contains(method)));
    assertThat(faults(WhatCounts.isDecidedOnce(), Stands.class)).isEmpty();
  }

  @Test
  void aStaticFieldThatChanges() {
    assertThat(faults(Purity.staticFieldsAreFinal(), Impure.class))
        .singleElement()
        .asString()
        .contains("Impure.last");
  }

  @Test
  void anExportedTypeThatShowsAnotherLibrary() {
    String exported = InputManager.class.getPackageName();
    ArchRule rule = TypeRules.exportedTypesShowOnlyJdkAndOwnTypes(Set.of(exported), Set.of());
    assertThat(faults(rule, InputManager.class, InputManager.class.getDeclaredClasses()[0]))
        .hasSize(2)
        .anySatisfy(fault -> assertThat(fault).contains("shown()", "ImmutableList"))
        .anySatisfy(fault -> assertThat(fault).contains("bounded(", "ImmutableList"));
    assertThat(
            faults(
                TypeRules.exportedTypesShowOnlyJdkAndOwnTypes(Set.of("elsewhere"), Set.of()),
                InputManager.class))
        .isEmpty();
  }

  @Test
  void anExportedTypeThatShowsAHiddenOne() {
    ArchRule rule =
        TypeRules.exportedTypesShowOnlyJdkAndOwnTypes(
            Set.of(Stands.class.getPackageName()), Set.of(ReadsUpwards.class.getPackageName()));
    assertThat(faults(rule, Stands.class))
        .singleElement()
        .asString()
        .contains("Stands.below", "ReadsUpwards");
  }

  @Test
  void aVagueName() {
    assertThat(faults(TypeRules.namesSayWhatATypeIs(), InputManager.class, Impure.class))
        .singleElement()
        .asString()
        .contains("InputManager");
  }

  @Test
  void aPublicTypeInAPackageWithoutNullMarked() {
    assertThat(faults(TypeRules.publicTypesStandInNullMarkedPackages(), Stands.class)).hasSize(1);
  }

  private static List<String> faults(ArchRule rule, Class<?>... types) {
    JavaClasses classes = new ClassFileImporter().importClasses(types);
    return rule.evaluate(classes).getFailureReport().getDetails();
  }
}
