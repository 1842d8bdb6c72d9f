package org.ensemblerules.gates;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

@Tag("slow")
class TypeRulesTest {
  @Test
  void exportedTypesShowOnlyJdkAndOwnTypes() {
    TypeRules.exportedTypesShowOnlyJdkAndOwnTypes(
            MainClasses.exportedPackages(), MainClasses.hiddenPackages())
        .check(MainClasses.all());
  }

  @Test
  void namesSayWhatATypeIs() {
    TypeRules.namesSayWhatATypeIs().check(MainClasses.all());
  }

  @Test
  void publicTypesStandInNullMarkedPackages() {
    TypeRules.publicTypesStandInNullMarkedPackages().check(MainClasses.all());
  }
}
