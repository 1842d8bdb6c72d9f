package org.ensemblerules.ruleset;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClass;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gates.MainClasses;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.Row;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.junit.jupiter.api.Test;

/** A table is declared once, and nothing that follows from the declarations leaves one out. */
class TableKindsTest {
  private static final List<Class<?>> DECLARING =
      List.of(InspectionKinds.class, CareKinds.class, StrengthKinds.class, RecordKinds.class);

  @Test
  void everyDeclarationIsInTheList() throws Exception {
    List<TableKind<?, ?>> declared = new ArrayList<>();
    for (Class<?> type : DECLARING) {
      for (var field : type.getDeclaredFields()) {
        if (Modifier.isPublic(field.getModifiers())) {
          declared.add((TableKind<?, ?>) field.get(null));
        }
      }
    }
    assertThat(TableKinds.all()).containsExactlyInAnyOrderElementsOf(declared);
  }

  /** A new type of row fails here until its table is declared. */
  @Test
  void everyTypeOfRowIsInATable() {
    assertThat(
            MainClasses.all().stream()
                .filter(type -> type.isAssignableTo(Row.class) && !type.isInterface())
                .map(JavaClass::getName)
                .filter(name -> !name.equals(Edition.class.getName())))
        .containsExactlyInAnyOrderElementsOf(
            TableKinds.all().stream().map(kind -> kind.rowType().getName()).toList());
  }

  @Test
  void eachStandsAfterTheOneItIsCompiledBy() {
    List<TableKind<?, ?>> all = TableKinds.all();
    for (TableKind<?, ?> kind : all) {
      kind.base().ifPresent(base -> assertThat(all.subList(0, all.indexOf(kind))).contains(base));
      assertThat(all.subList(0, all.indexOf(kind) + 1)).contains(kind.home());
    }
  }

  @Test
  void aKindIsFoundByItsNameAndByItsRows() {
    for (TableKind<?, ?> kind : TableKinds.all()) {
      assertThat(TableKinds.named(kind.name())).isEqualTo(Optional.of(kind));
      assertThat(kind.name()).matches("[a-z]+(-[a-z]+)*").hasToString(kind.toString());
    }
    assertThat(TableKinds.named("no-such-table")).isEmpty();
    for (Row row : FrozenRules.tables().rows()) {
      TableKind<?, ?> kind = TableKinds.of(row).orElseThrow();
      assertThat(kind.rowType()).isEqualTo(row.getClass());
      assertThat(FrozenRules.tables().rows(kind)).anyMatch(row::equals);
    }
    assertThat(TableKinds.of(FrozenRules.rules().editions().get(Subject.CARE))).isEmpty();
  }

  /** Each row that any table holds is a line of the text that is hashed, under its table's name. */
  @Test
  void everyTableIsInTheFingerprint() {
    CanonicalRules canonical = FrozenRules.rules().canonical();
    for (TableKind<?, ?> kind : TableKinds.all()) {
      assertThat(canonical.lines())
          .filteredOn(line -> line.startsWith(kind.name() + "\t"))
          .as("%s", kind)
          .hasSize(FrozenRules.tables().rows(kind).size());
    }
    assertThat(canonical.lines()).contains("form\t" + CanonicalRules.FORM);
  }

  @Test
  void emptyTablesAnswerForWhatIsNotGiven() {
    Tables tables =
        Tables.of(
            TableMap.none()
                .with(InspectionKinds.ANATOMY, FrozenRules.tables().anatomy())
                .with(InspectionKinds.CHECKS, FrozenRules.tables().checks()));
    for (TableKind<?, ?> kind : TableKinds.all()) {
      if (kind != InspectionKinds.ANATOMY && kind != InspectionKinds.CHECKS) {
        assertThat(tables.rows(kind)).as("%s", kind).isEmpty();
      }
    }
    assertThatThrownBy(() -> Tables.of(TableMap.none()))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("anatomy");
  }

  @Test
  void aRowOfNoTableHasNoFingerprint() {
    record Invented(Provenance provenance) implements Row {
      @Override
      public List<String> canonical() {
        return List.of();
      }
    }

    Row invented = new Invented(FrozenProvenance.of("x"));
    assertThatThrownBy(() -> CanonicalRules.of(Map.of(), List.of(invented)))
        .isInstanceOf(InvalidValueException.class)
        .hasMessageContaining("CanonicalRules.rows");
  }
}
