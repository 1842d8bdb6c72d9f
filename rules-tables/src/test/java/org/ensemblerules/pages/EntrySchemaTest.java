package org.ensemblerules.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ensemblerules.catalog.Catalog;
import org.ensemblerules.catalog.ElementForm;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.CriterionRow;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Edition;
import org.ensemblerules.tables.ShippedRules;
import org.junit.jupiter.api.Test;

/**
 * A schema for what is entered now: an assessment whose sites and criteria are those of its element
 * under some shipped edition. Records of long ago may name others, which the library judges; a form
 * should not.
 */
class EntrySchemaTest {
  private static final Path FOLDER =
      Path.of("src", "main", "resources", "org", "ensemblerules", "tables", "schema");
  private static final Path FILE = FOLDER.resolve("entry.schema.json");
  private static final ObjectMapper MAPPER = new ObjectMapper();

  /** Of each kind and use, in order. */
  private static Map<String, List<ElementForm>> forms() {
    Map<String, List<ElementForm>> forms = new TreeMap<>();
    for (Edition edition : ShippedRules.editions()) {
      ShippedRules.of(edition.id())
          .ifPresent(
              rules ->
                  rules
                      .catalog()
                      .elements()
                      .forEach(
                          form ->
                              forms
                                  .computeIfAbsent(
                                      form.kind() + "-" + form.use(), none -> new ArrayList<>())
                                  .add(form)));
    }
    return forms;
  }

  private static TreeSet<String> sites(List<ElementForm> forms) {
    TreeSet<String> sites = new TreeSet<>();
    for (ElementForm form : forms) {
      form.sites().forEach(site -> sites.add(site.site().toString()));
      // The whole of it, and of a layer.
      sites.add(Part.WHOLE_ELEMENT.name());
      form.layers().forEach(layer -> sites.add(Site.of(Part.WHOLE_ELEMENT, layer).toString()));
    }
    return sites;
  }

  /** By their keys, and by each end of the name of their family, which reading takes for it. */
  private static TreeSet<String> criteria(List<ElementForm> forms) {
    TreeSet<String> names = new TreeSet<>();
    for (ElementForm form : forms) {
      for (List<CriterionRow> rows : form.criteria().values()) {
        for (CriterionRow row : rows) {
          String key = row.key().value();
          names.add(key);
          String family = key.replaceFirst("/.*", "");
          names.add(family);
          for (int at = family.indexOf('-'); at >= 0; at = family.indexOf('-', at + 1)) {
            names.add(family.substring(at + 1));
          }
        }
      }
    }
    return names;
  }

  private static String schema() throws IOException {
    ObjectNode head = MAPPER.createObjectNode();
    head.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    head.put("$id", "https://ensemblerules.example/schema/entry.schema.json");
    head.put("title", "What is entered now, to be judged");
    head.put(
        "description",
        "An assessment whose sites and criteria are those of its element under some shipped"
            + " edition, so that a form refuses typos and the parts of other elements. Records of"
            + " long ago may have others; assessment.schema.json takes them.");
    head.put("type", "object");
    head.put("$ref", "assessment.schema.json");
    String start = MAPPER.writeValueAsString(head);
    StringBuilder text = new StringBuilder(start.substring(0, start.length() - 1));
    Map<String, List<ElementForm>> forms = forms();
    text.append(",\n\"allOf\": [\n")
        .append(
            forms.values().stream()
                .map(those -> condition(those.get(0)).toString())
                .collect(Collectors.joining(",\n")));
    text.append("\n],\n\"$defs\": {\n")
        .append(
            forms.entrySet().stream()
                .map(
                    entry ->
                        list(entry.getKey() + "-site", sites(entry.getValue()))
                            + ",\n"
                            + list(entry.getKey() + "-criterion", criteria(entry.getValue())))
                .collect(Collectors.joining(",\n")));
    return text.append("\n}}\n").toString();
  }

  private static String list(String name, TreeSet<String> names) {
    ArrayNode values = MAPPER.createArrayNode();
    names.forEach(values::add);
    return "\"" + name + "\": " + MAPPER.createObjectNode().set("enum", values);
  }

  private static JsonNode condition(ElementForm form) {
    String name = form.kind() + "-" + form.use();
    String json =
        """
        {"if": {"properties": {"element": {"properties":
            {"kind": {"const": "%s"}, "use": {"const": "%s"}}, "required": ["kind", "use"]}},
          "required": ["element"]},
        "then": {"properties": {
          "element": {"properties": {"notFitted": {"items": {"$ref": "#/$defs/%s-site"}}}},
          "findings": {"items": {"properties": {"site": {"$ref": "#/$defs/%s-site"}}}},
          "history": {"items": {"properties": {
            "finding": {"properties": {"site": {"$ref": "#/$defs/%s-site"}}},
            "inspection": {"properties": {"outcomes": {
              "items": {"properties": {"criterion": {"$ref": "#/$defs/%s-criterion"}}},
              "additionalProperties": {"items": {"$ref": "#/$defs/%s-criterion"}}}}}}}}}}}
        """
            .formatted(form.kind(), form.use(), name, name, name, name, name);
    try {
      return MAPPER.readTree(json);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void theSchemaIsThatOfTheTables() throws IOException {
    String schema = schema();
    if (Boolean.getBoolean("docs.update")) {
      Files.writeString(FILE, schema);
    }
    assertThat(FILE)
        .as("differs from the tables; write it anew with -Ddocs.update=true")
        .hasContent(schema);
  }

  private static List<String> objections(String text) throws IOException {
    ObjectNode whole = (ObjectNode) MAPPER.readTree(FOLDER.resolve("bundle.schema.json").toFile());
    whole.put("$ref", "entry.schema.json");
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(whole);
    return schema.validate(text, InputFormat.JSON).stream()
        .map(error -> error.getInstanceLocation() + ": " + error.getMessage())
        .toList();
  }

  private static String inspected(String criterion, String site) {
    return ("{'element':{'id':'X','kind':'COAT','use':'STRUCTURAL'},'findings':[{'id':'F','site':'"
            + site
            + "','defect':'TEAR','seen':'2026-01-02'}],'history':[{'event':'INSPECTED',"
            + "'inspection':{'kind':'ADVANCED','occasion':'PERIODIC','on':'2026-01-02',"
            + "'outcomes':[{'criterion':'"
            + criterion
            + "','outcome':'CLEAR'}]}}]}")
        .replace('\'', '"');
  }

  @Test
  void aTypoOfACriterionAndTheSiteOfAnotherElementAreRefused() throws IOException {
    RuleSet rules = ShippedRules.standard().rules();
    String key =
        Catalog.of(rules)
            .element(ElementKind.COAT, Use.STRUCTURAL)
            .orElseThrow()
            .criteria()
            .values()
            .iterator()
            .next()
            .get(0)
            .key()
            .value();
    assertThat(objections(inspected(key, "FABRIC@OUTER_SHELL"))).isEmpty();
    assertThat(objections(inspected(key + "x", "FABRIC@OUTER_SHELL")))
        .singleElement()
        .asString()
        .startsWith("/history/0/inspection/outcomes/0/criterion");
    assertThat(objections(inspected(key, "HELMET_SHELL")))
        .singleElement()
        .asString()
        .startsWith("/findings/0/site");
    String together =
        inspected(key, "FABRIC@OUTER_SHELL")
            .replaceFirst("\"outcomes\":\\[.*?]", "\"outcomes\":{\"CLEAR\":[\"no-such-look\"]}");
    assertThat(objections(together))
        .singleElement()
        .asString()
        .startsWith("/history/0/inspection/outcomes/CLEAR/0");
    // Of an element that does not exist nothing can be entered but what an assessment may have.
    assertThat(
            objections(
                inspected(key, "FABRIC@OUTER_SHELL").replace("\"STRUCTURAL\"", "\"UNDERWATER\"")))
        .isNotEmpty();
  }
}
