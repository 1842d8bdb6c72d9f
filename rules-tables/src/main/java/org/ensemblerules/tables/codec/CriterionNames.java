package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.inspection.CriteriaTable;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;

/**
 * The short names of criteria within their inspection: the end of the key of their family after a
 * hyphen, or all of it, if no other criterion of that inspection ends so.
 *
 * @param criteria the criteria in force
 */
public record CriterionNames(CriteriaTable criteria) {
  private static final String OUTCOMES = "outcomes";

  /** Reads the key of a criterion, in full or short; a short one that is not one is a fault. */
  Optional<RowKey> read(JsonCursor at, InspectionKind kind, NamedElement element) {
    List<CriterionRow> all = criteria.required(kind, element.kind(), element.use());
    return at.parsed(RowKey::new)
        .flatMap(
            key -> {
              if (key.value().contains("/")) {
                return Optional.of(key);
              }
              List<CriterionRow> meant = meant(key.value(), all);
              return meant.size() == 1
                  ? Optional.of(meant.get(0).key())
                  : at.mismatch(
                      "one of " + names(meant.isEmpty() ? all : meant, all) + ", or a full key");
            });
  }

  private static String names(List<CriterionRow> some, List<CriterionRow> all) {
    return String.join(", ", some.stream().map(row -> shortest(row, all)).toList());
  }

  /** Those whose family is called so; else those whose family ends so. */
  private static List<CriterionRow> meant(String name, List<CriterionRow> all) {
    List<CriterionRow> exact = all.stream().filter(row -> family(row).equals(name)).toList();
    return exact.isEmpty()
        ? all.stream().filter(row -> family(row).endsWith("-" + name)).toList()
        : exact;
  }

  private static String family(CriterionRow row) {
    String key = row.key().value();
    int end = key.indexOf('/');
    return end < 0 ? key : key.substring(0, end);
  }

  private static String shortest(CriterionRow row, List<CriterionRow> all) {
    String family = family(row);
    for (int hyphen = family.lastIndexOf('-');
        hyphen >= 0;
        hyphen = family.lastIndexOf('-', hyphen - 1)) {
      String name = family.substring(hyphen + 1);
      if (meant(name, all).equals(List.of(row))) {
        return name;
      }
    }
    return meant(family, all).equals(List.of(row)) ? family : row.key().value();
  }

  /** Puts short names in place of the keys of criteria, those of one outcome together. */
  JsonNode shorten(JsonNode assessment, NamedElement element) {
    for (JsonNode event : assessment.path("history")) {
      if (event.path("inspection") instanceof ObjectNode inspection && inspection.has(OUTCOMES)) {
        InspectionKind kind = InspectionKind.valueOf(inspection.path("kind").asText());
        inspection.set(OUTCOMES, together(inspection.path(OUTCOMES), kind, element));
      }
    }
    return assessment;
  }

  private JsonNode together(JsonNode outcomes, InspectionKind kind, NamedElement element) {
    List<CriterionRow> all = criteria.required(kind, element.kind(), element.use());
    ObjectNode together = JsonNodeFactory.instance.objectNode();
    for (JsonNode each : outcomes) {
      String key = each.path("criterion").asText();
      String name =
          all.stream()
              .filter(row -> row.key().value().equals(key))
              .map(row -> shortest(row, all))
              .findFirst()
              .orElse(key);
      ArrayNode said = together.withArray(each.path("outcome").asText());
      if (Stream.iterate(0, i -> i < said.size(), i -> i + 1)
          .anyMatch(i -> said.get(i).asText().equals(name))) {
        return outcomes;
      }
      said.add(name);
    }
    return together;
  }
}
