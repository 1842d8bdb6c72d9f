package org.ensemblerules.csv;

import java.util.List;
import java.util.stream.Collectors;

/** Writes records as RFC 4180 has them: lines end in CR LF, and a quote is doubled in quotes. */
final class Csv {
  private Csv() {}

  static String of(List<List<String>> records) {
    return records.stream().map(Csv::line).collect(Collectors.joining());
  }

  private static String line(List<String> fields) {
    return fields.stream().map(Csv::field).collect(Collectors.joining(",", "", "\r\n"));
  }

  private static String field(String text) {
    boolean plain = text.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
  }
}
