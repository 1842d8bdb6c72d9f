package org.ensemblerules.example.benchmarks.rivals;

import java.io.StringReader;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.kie.dmn.api.core.DMNContext;
import org.kie.dmn.api.core.DMNModel;
import org.kie.dmn.api.core.DMNRuntime;
import org.kie.dmn.core.internal.utils.DMNRuntimeBuilder;
import org.kie.internal.io.ResourceFactory;

/** A decision table of DMN 1.3 (OMG formal/2021-01-01). */
public final class DmnRival implements Rival<DMNContext> {
  private static final String NAMESPACE = "https://ensemblerules.example/benchmarks";
  private static final String MODEL = "defects";
  private static final String DECISION = "row";
  private static final Map<String, String> INPUTS =
      Map.of("place", "string", "defect", "string", "told", "string", "size", "number");
  private static final List<String> ORDER = List.of("place", "defect", "told", "size");

  private final DMNRuntime runtime;
  private final DMNModel model;

  /**
   * Writes the table and compiles it.
   *
   * @param table the lines; not null
   */
  public DmnRival(NeutralTable table) {
    runtime =
        DMNRuntimeBuilder.fromDefaults()
            .buildConfiguration()
            .fromResources(
                List.of(ResourceFactory.newReaderResource(new StringReader(model(table)))))
            .getOrElseThrow(IllegalStateException::new);
    model = runtime.getModel(NAMESPACE, MODEL);
    if (model.hasErrors()) {
      throw new IllegalStateException(model.getMessages().toString());
    }
  }

  @Override
  public DMNContext input(Asked asked) {
    DMNContext context = runtime.newContext();
    context.set("place", asked.place());
    context.set("defect", asked.defect().name());
    context.set("told", asked.told().by().name());
    context.set("size", BigDecimal.valueOf(asked.told().whole()));
    return context;
  }

  @Override
  public String answer(DMNContext input) {
    Object found =
        runtime
            .evaluateByName(model, input, DECISION)
            .getDecisionResultByName(DECISION)
            .getResult();
    return found == null ? "" : found.toString();
  }

  private static String model(NeutralTable table) {
    StringBuilder xml = new StringBuilder();
    xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
        .append("<definitions xmlns=\"https://www.omg.org/spec/DMN/20191111/MODEL/\" id=\"d\"")
        .append(" name=\"" + MODEL + "\" namespace=\"" + NAMESPACE + "\">\n");
    for (String input : ORDER) {
      xml.append("<inputData id=\"i-" + input + "\" name=\"" + input + "\"><variable name=\"")
          .append(input + "\" typeRef=\"" + INPUTS.get(input) + "\"/></inputData>\n");
    }
    xml.append("<decision id=\"" + DECISION + "\" name=\"" + DECISION + "\"><variable name=\"")
        .append(DECISION + "\" typeRef=\"string\"/>\n");
    for (String input : ORDER) {
      xml.append("<informationRequirement><requiredInput href=\"#i-" + input + "\"/>")
          .append("</informationRequirement>\n");
    }
    xml.append("<decisionTable hitPolicy=\"UNIQUE\">\n");
    for (String input : ORDER) {
      xml.append("<input><inputExpression typeRef=\"" + INPUTS.get(input) + "\"><text>" + input)
          .append("</text></inputExpression></input>\n");
    }
    xml.append("<output typeRef=\"string\"/>\n");
    table.lines().forEach(line -> xml.append(rule(line)));
    return xml.append("</decisionTable></decision></definitions>\n").toString();
  }

  private static String rule(Line line) {
    return "<rule>"
        + entry("input", text(line.place()))
        + entry("input", text(line.defect().name()))
        + entry("input", text(line.by().name()))
        + entry("input", "(" + line.over() + ".." + line.upTo() + "]")
        + entry("output", text(line.row()))
        + "</rule>\n";
  }

  private static String entry(String kind, String text) {
    return "<" + kind + "Entry><text>" + text + "</text></" + kind + "Entry>";
  }

  private static String text(String value) {
    return "\"" + value + "\"";
  }
}
