package org.ensemblerules.example.department;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** The program run once, as by a user on 25 November 2026. */
record ProgramRun(int code, String out, String err) {
  private static final Clock TODAY =
      Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);
  private static final JsonMapper JSON = new JsonMapper();

  static ProgramRun of(String... args) {
    return withInput("", args);
  }

  static ProgramRun withInput(String input, String... args) {
    return withInput(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)), args);
  }

  static ProgramRun withInput(InputStream input, String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        new DepartmentProgram(input, new PrintWriter(out), new PrintWriter(err), TODAY).run(args);
    return new ProgramRun(code, out.toString(), err.toString());
  }

  /** The verdicts that were printed. */
  List<JsonNode> verdicts() {
    return verdicts(out);
  }

  static List<JsonNode> verdicts(String lines) {
    List<JsonNode> verdicts = new ArrayList<>();
    lines.lines().forEach(line -> verdicts.add(json(line)));
    return verdicts;
  }

  static JsonNode json(String text) {
    try {
      return JSON.readTree(text);
    } catch (JsonProcessingException e) {
      throw new AssertionError("no JSON: " + text, e);
    }
  }
}
