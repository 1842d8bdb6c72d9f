package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.care.CareRoute;
import org.ensemblerules.example.department.report.CareText;
import org.ensemblerules.tables.CareJson;
import org.ensemblerules.tables.message.CareRequest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** How gear is cared for after what it met. */
@Command(
    name = "care",
    description = {
      "Tells how gear is cared for after what it met: steps, who, what is recorded, rows, basis.",
      "A bad line is named on the standard error; the others are answered."
    })
final class CareCommand implements Callable<Integer> {
  static final String SAMPLE = "care-requests.jsonl";

  private final InputStream in;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final RequestFile file = new RequestFile();
  @Spec private CommandSpec spec = CommandSpec.create();

  CareCommand(InputStream in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    GearRules rules = rulesOption.rules(spec);
    CareText text = new CareText();
    return file.answer(
        new RequestFile.Question<>(
            SAMPLE,
            CareJson::read,
            CareRequest::element,
            false,
            request -> text.of(request, route(rules, request)),
            request -> CareJson.write(request, route(rules, request)),
            text::notes),
        in,
        spec,
        rules);
  }

  private static CareRoute route(GearRules rules, CareRequest request) {
    return rules.care(request.element(), request.exposures());
  }
}
