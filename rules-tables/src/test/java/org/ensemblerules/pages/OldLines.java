package org.ensemblerules.pages;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** From a line whose inspections stand beside the history: the lines that the page shows. */
final class OldLines {
  /** A helmet as a line had it then. */
  static final String OLD =
      "{\"element\": {\"id\": \"H-17\", \"kind\": \"HELMET\", \"use\": \"STRUCTURAL\"},"
          + " \"history\": [{\"event\": \"USED\", \"on\": \"2026-11-23\"}],"
          + " \"inspections\": [{\"kind\": \"ROUTINE\", \"occasion\": \"AFTER_USE\","
          + " \"on\": \"2026-11-24\"}]}";

  private OldLines() {}

  // page begins
  static String converted(String old) throws JsonProcessingException {
    JsonMapper json = new JsonMapper();
    ObjectNode line = (ObjectNode) json.readTree(old);
    ArrayNode history = line.withArray("history");
    for (JsonNode inspection : line.withArray("inspections")) {
      history.addObject().put("event", "INSPECTED").set("inspection", inspection);
    }
    line.remove("inspections");
    return json.writeValueAsString(line);
  }

  // page ends

  /** The line as it was written then. */
  static String old(String today) throws JsonProcessingException {
    JsonMapper json = new JsonMapper();
    ObjectNode line = (ObjectNode) json.readTree(today);
    ArrayNode history = json.createArrayNode();
    for (JsonNode event : line.withArray("history")) {
      if (event.has("inspection")) {
        line.withArray("inspections").add(event.get("inspection"));
      } else {
        history.add(event);
      }
    }
    line.set("history", history);
    return json.writeValueAsString(line);
  }
}
