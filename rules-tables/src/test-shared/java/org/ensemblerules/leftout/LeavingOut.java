package org.ensemblerules.leftout;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.verdict.Assessment;

/**
 * All the ways to leave one thing out of a record, or to tell a date of it less exactly. They are
 * found in its JSON, so that none of its fields is forgotten; what can't be read without the thing
 * is no record.
 */
final class LeavingOut {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Pattern DAY = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
  private static final Pattern MONTH = Pattern.compile("\\d{4}-\\d\\d");
  private static final Pattern YEAR = Pattern.compile("\\d{4}");

  /** One way: a pointer, and the text that takes the place of a date; empty to leave it out. */
  record Way(JsonPointer at, Optional<String> instead) {
    @Override
    public String toString() {
      return instead.map(text -> text + " instead").orElse("left out") + " at " + at;
    }
  }

  private LeavingOut() {}

  static JsonNode json(Assessment assessment) {
    try {
      return JSON.readTree(AssessmentJson.write(assessment));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The ways, part by part: the element, then each event and finding. */
  static List<List<Way>> ways(JsonNode record) {
    List<List<Way>> ways = new ArrayList<>();
    ways.add(under(record, JsonPointer.compile("/element")));
    for (String list : List.of("history", "findings")) {
      for (int i = 0; i < record.path(list).size(); i++) {
        ways.add(under(record, JsonPointer.compile("/" + list + "/" + i)));
      }
    }
    return ways;
  }

  /** The ways to leave out a whole event or finding. */
  static List<Way> wholes(JsonNode record) {
    return ways(record).stream()
        .map(part -> part.get(0))
        .filter(way -> !way.at().toString().equals("/element"))
        .toList();
  }

  /** The ways to leave out anything of a finding, or of what answers one. */
  static List<Way> ofFindings(JsonNode record) {
    return ways(record).stream()
        .filter(
            part -> {
              String at = part.get(0).at().toString();
              return at.startsWith("/findings")
                  || record.at(at + "/finding").isObject()
                  || record.at(at + "/answers").isArray();
            })
        .flatMap(List::stream)
        .toList();
  }

  private static List<Way> under(JsonNode record, JsonPointer at) {
    List<Way> ways = new ArrayList<>();
    collect(record.at(at), at, ways);
    return ways;
  }

  private static void collect(JsonNode node, JsonPointer at, List<Way> ways) {
    ways.add(new Way(at, Optional.empty()));
    if (node.isObject()) {
      node.fieldNames()
          .forEachRemaining(name -> collect(node.get(name), at.appendProperty(name), ways));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        collect(node.get(i), at.appendIndex(i), ways);
      }
    } else if (node.isTextual()) {
      blurred(node.textValue()).forEach(text -> ways.add(new Way(at, Optional.of(text))));
    }
  }

  private static List<String> blurred(String text) {
    List<String> blurred = new ArrayList<>();
    boolean day = DAY.matcher(text).matches();
    boolean month = day || MONTH.matcher(text).matches();
    if (day) {
      blurred.add(text.substring(0, 7));
    }
    if (month) {
      blurred.add(text.substring(0, 4));
    }
    if (month || YEAR.matcher(text).matches()) {
      blurred.add("UNKNOWN");
    }
    return blurred;
  }

  /** Goes one way; empty where what is left can't be read. */
  static Optional<Taken> take(
      RuleSet rules, LocalDate asOf, Assessment from, JsonNode record, Way way) {
    JsonNode copy = record.deepCopy();
    JsonPointer last = way.at().last();
    JsonNode holder = copy.at(way.at().head());
    if (holder instanceof ObjectNode object) {
      way.instead()
          .ifPresentOrElse(
              text -> object.put(last.getMatchingProperty(), text),
              () -> object.remove(last.getMatchingProperty()));
    } else if (holder instanceof ArrayNode array && way.instead().isEmpty()) {
      array.remove(last.getMatchingIndex());
      if (array.isEmpty() && copy.at(way.at().head().head()) instanceof ObjectNode parent) {
        parent.remove(way.at().head().last().getMatchingProperty());
      }
    } else {
      return Optional.empty();
    }
    return AssessmentJson.read("assessment", copy.toString())
                instanceof Checked.Sound<Assessment, ?> sound
            && !sound.value().equals(from)
        ? Optional.of(
            new Taken(
                way,
                record.at(way.at()),
                Grounds.isGround(rules, asOf, from, record, way),
                copy,
                sound.value(),
                asOf))
        : Optional.empty();
  }
}
