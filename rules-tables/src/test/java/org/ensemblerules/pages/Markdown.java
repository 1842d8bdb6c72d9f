package org.ensemblerules.pages;

import java.util.List;
import java.util.stream.Collectors;

/** Collects the text of a page. */
final class Markdown {
  private final StringBuilder text = new StringBuilder();

  Markdown(String title) {
    text.append("# ").append(title).append("\n");
  }

  Markdown heading(String heading) {
    text.append("\n## ").append(heading).append("\n");
    return this;
  }

  Markdown paragraph(String paragraph) {
    text.append("\n").append(paragraph).append("\n");
    return this;
  }

  Markdown points(List<String> points) {
    text.append("\n");
    points.forEach(point -> text.append("- ").append(point).append("\n"));
    return this;
  }

  Markdown table(List<String> head, List<List<String>> rows) {
    text.append("\n").append(line(head));
    text.append(line(head.stream().map(column -> "---").toList()));
    rows.forEach(row -> text.append(line(row)));
    return this;
  }

  private static String line(List<String> cells) {
    return cells.stream()
        .map(cell -> cell.replace("|", "\\|").replace("\n", " "))
        .collect(Collectors.joining(" | ", "| ", " |\n"));
  }

  Page page(String name) {
    return new Page(name, text.toString());
  }
}
