package org.ensemblerules.dmn;

import static java.util.stream.Collectors.toList;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ensemblerules.defect.Band;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;

/**
 * Writes the defect rows of one kind of element as a model of DMN 1.3 (OMG formal/2021-01-01): for
 * each place that has rows a decision table that collects the key of every row that applies, and
 * one that names by what the extent is told.
 */
final class DmnExport {
  static final String NAMESPACE = "https://ensemblerules.example/defects";
  static final String MODEL = "defects";
  static final List<String> INPUTS = List.of("defect", "length", "area", "count", "grade");

  private DmnExport() {}

  static String of(List<DefectRow> rows) {
    StringBuilder xml = new StringBuilder();
    xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<definitions xmlns=\"https://www.omg.org/spec/DMN/20191111/MODEL/\" id=\"d\"")
        .append(" name=\"" + MODEL + "\" namespace=\"" + NAMESPACE + "\">\n");
    for (String input : INPUTS) {
      xml.append("<inputData id=\"i-" + input + "\" name=\"" + input + "\"><variable name=\"")
          .append(input + "\" typeRef=\"" + type(input) + "\"/></inputData>\n");
    }
    Map<Site, List<DefectRow>> places =
        rows.stream().collect(Collectors.groupingBy(DefectRow::site, LinkedHashMap::new, toList()));
    places.forEach(
        (site, own) -> {
          Map<String, List<String>> lines = new LinkedHashMap<>();
          own.forEach(row -> lines.put(row.key().value(), line(row)));
          table(xml, rowsAt(site), INPUTS, lines);
          Map<String, List<String>> told = new LinkedHashMap<>();
          own.forEach(row -> told.put(toldBy(row), List.of(text(row.defect()))));
          table(xml, extentAt(site), List.of("defect"), told);
        });
    return xml.append("</definitions>\n").toString();
  }

  static String rowsAt(Site site) {
    return "rows at " + name(site);
  }

  static String extentAt(Site site) {
    return "extent at " + name(site);
  }

  /** A name of DMN has no at sign. */
  private static String name(Site site) {
    return site.toString().replace('@', ' ');
  }

  private static String toldBy(DefectRow row) {
    return row.defect() + " " + row.band().kind();
  }

  private static void table(
      StringBuilder xml, String name, List<String> inputs, Map<String, List<String>> lines) {
    String id = name.replace(' ', '-');
    xml.append(
        "<decision id=\"" + id + "\" name=\"" + name + "\"><variable name=\"" + name + "\"/>\n");
    for (String input : inputs) {
      xml.append("<informationRequirement><requiredInput href=\"#i-" + input + "\"/>")
          .append("</informationRequirement>\n");
    }
    xml.append("<decisionTable hitPolicy=\"COLLECT\">\n");
    for (String input : inputs) {
      xml.append("<input><inputExpression typeRef=\"" + type(input) + "\"><text>" + input)
          .append("</text></inputExpression></input>\n");
    }
    xml.append("<output typeRef=\"string\"/>\n");
    lines.forEach(
        (output, line) ->
            xml.append("<rule>")
                .append(
                    line.stream()
                        .map(
                            entry -> "<inputEntry><text>" + escaped(entry) + "</text></inputEntry>")
                        .collect(Collectors.joining()))
                .append(
                    "<outputEntry><text>"
                        + escaped(text(output))
                        + "</text></outputEntry></rule>\n"));
    xml.append("</decisionTable></decision>\n");
  }

  private static String type(String input) {
    return switch (input) {
      case "length", "area", "count" -> "number";
      default -> "string";
    };
  }

  private static List<String> line(DefectRow row) {
    return List.of(
        text(row.defect()),
        row.band().kind() == ExtentKind.LENGTH ? range(row.band(), Unit.MILLIMETER) : "-",
        row.band().kind() == ExtentKind.AREA ? range(row.band(), Unit.SQUARE_MILLIMETER) : "-",
        row.band() instanceof Band.Counts counts
            ? between(
                Optional.of(Integer.toString(counts.over())),
                Optional.of(Integer.toString(counts.upTo())))
            : "-",
        row.band() instanceof Band.Grades grades
            ? grades.grades().stream().map(DmnExport::text).collect(Collectors.joining(", "))
            : "-");
  }

  private static String range(Band band, Unit unit) {
    Band.Range range = (Band.Range) band;
    return between(range.over().map(at -> in(at, unit)), range.upTo().map(at -> in(at, unit)));
  }

  private static String between(Optional<String> over, Optional<String> upTo) {
    return upTo.map(most -> "(" + over.orElse("0") + ".." + most + "]")
        .orElseGet(() -> "> " + over.orElse("0"));
  }

  /** Every edge of a band is a finite decimal in millimeters, else this throws. */
  private static String in(Quantity edge, Unit unit) {
    return new BigDecimal(edge.in(unit).value().numerator())
        .divide(new BigDecimal(edge.in(unit).value().denominator()), MathContext.UNLIMITED)
        .toPlainString();
  }

  private static String text(Object value) {
    return "\"" + value + "\"";
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
