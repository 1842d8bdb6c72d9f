package org.ensemblerules.words;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ensemblerules.gates.MainClasses;
import org.junit.jupiter.api.Test;

class GearCodeSetTest {
  /** What no record and no answer about gear bears, or what has symbols or sentences of its own. */
  private static final Set<String> NOT_FOR_PEOPLE =
      Set.of(
          "Bound",
          "Comparison",
          "ConditionForm",
          "Dimension",
          "FaultCode",
          "GearCodeSet",
          "GradeScale",
          "HeldBy",
          "HydrostaticFault",
          "Observed",
          "Remark",
          "Strictness",
          "Ties",
          "Trigger",
          "Unit",
          "VerdictPart");

  @Test
  void eachEnumerationThatPeopleMeetIsASet() {
    Set<String> sets =
        Arrays.stream(GearCodeSet.values())
            .map(set -> set.codes().get(0).getDeclaringClass().getSimpleName())
            .collect(Collectors.toSet());
    Set<String> enums =
        MainClasses.all().stream()
            .filter(type -> type.isEnum() && type.isTopLevelClass())
            .filter(type -> type.getModifiers().contains(JavaModifier.PUBLIC))
            .map(JavaClass::getSimpleName)
            .collect(Collectors.toCollection(TreeSet::new));
    enums.removeAll(NOT_FOR_PEOPLE);
    assertThat(sets).containsAll(enums);
  }

  @Test
  void aCodeIsFoundByItsName() {
    for (GearCodeSet set : GearCodeSet.values()) {
      for (Enum<?> code : set.codes()) {
        assertThat(set.code(code.name())).hasValue(code);
      }
      assertThat(set.code("NONE_OF_THEM")).isEmpty();
    }
  }
}
