package org.ensemblerules.audit.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ensemblerules.audit.difference.ChangeKind;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.audit.soundness.FlawKind;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.tables.TableSchemas;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The schemas of reports and differences say what the code says, name by name. */
class AuditSchemasTest {
  private static final Map<String, List<String>> ENUMERATIONS =
      Map.of(
          "difference-answer#/$defs/changeKind", names(ChangeKind.class),
          "difference-answer#/$defs/strictness", names(Comparison.class),
          "difference-answer#/$defs/effect", names(FleetEffect.class),
          "audit-answer#/$defs/flawKind", names(FlawKind.class));

  private static List<String> names(Class<? extends Enum<?>> type) {
    return Arrays.stream(type.getEnumConstants()).map(Enum::name).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"audit-answer", "difference-answer", "audit-words"})
  void theyAreClosedAndTheirNamesAreThoseOfTheCode(String file) {
    Map<String, List<String>> known = new HashMap<>(ENUMERATIONS);
    known.keySet().removeIf(name -> !name.startsWith(file + "#"));
    assertThat(TableSchemas.enumerations(file)).isEqualTo(known);
    assertThat(TableSchemas.openObjects(file)).isEmpty();
    assertThat(TableSchemas.objectionsToItsForm(file)).isEmpty();
  }
}
