package org.ensemblerules.example.department;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.report.CriteriaText;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.tables.CriteriaJson;
import org.ensemblerules.tables.message.CriteriaAnswer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What an inspection looks at. */
@Command(
    name = "criteria",
    description =
        "Prints what an inspection looks at, in order, with what must be at hand and how.")
final class CriteriaCommand implements Callable<Integer> {
  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final JsonOption json = new JsonOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(index = "0", paramLabel = "KIND", description = "One of ${COMPLETION-CANDIDATES}.")
  private ElementKind kind = ElementKind.COAT;

  @Parameters(index = "1", paramLabel = "USE", description = "One of ${COMPLETION-CANDIDATES}.")
  private Use use = Use.STRUCTURAL;

  @Option(
      names = "--inspection",
      paramLabel = "INSPECTION",
      defaultValue = "ADVANCED",
      description = "One of ${COMPLETION-CANDIDATES}. Default: ${DEFAULT-VALUE}.")
  private InspectionKind inspection = InspectionKind.ADVANCED;

  @Override
  public Integer call() {
    GearRules rules = rulesOption.rules(spec);
    String text = CriteriaText.of(rules, inspection, kind, use);
    if (text.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(),
          "found "
              + inspection
              + " inspection of "
              + kind
              + " "
              + use
              + ", allowed with that inspection: "
              + inspected(rules));
    }
    spec.commandLine()
        .getOut()
        .print(
            json.isAsked()
                ? CriteriaJson.write(CriteriaAnswer.of(rules, inspection, kind, use)) + "\n"
                : text);
    return ExitCodes.ALL_READ;
  }

  private List<String> inspected(GearRules rules) {
    List<String> names = new ArrayList<>();
    for (ElementKind each : ElementKind.values()) {
      for (Use of : Use.values()) {
        if (!rules.criteria(inspection, each, of).isEmpty()) {
          names.add(each + " " + of);
        }
      }
    }
    return names;
  }
}
