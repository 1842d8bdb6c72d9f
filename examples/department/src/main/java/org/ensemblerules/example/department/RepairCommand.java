package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.report.RepairText;
import org.ensemblerules.tables.RepairJson;
import org.ensemblerules.tables.message.RepairRequest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What becomes of damage, and who may mend it. */
@Command(
    name = "repair",
    description = {
      "Tells whether damage may be repaired, by whom, and what is checked before and after.",
      "A bad line is named on the standard error; the others are answered."
    })
final class RepairCommand implements Callable<Integer> {
  static final String SAMPLE = "repair-requests.jsonl";

  private final InputStream in;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final RequestFile file = new RequestFile();
  @Spec private CommandSpec spec = CommandSpec.create();

  RepairCommand(InputStream in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    GearRules rules = rulesOption.rules(spec);
    RepairText text = new RepairText();
    return file.answer(
        new RequestFile.Question<>(
            SAMPLE,
            RepairJson::read,
            RepairRequest::element,
            false,
            request -> text.of(request, request.plan(rules)),
            request -> RepairJson.write(request, request.plan(rules)),
            text::notes),
        in,
        spec,
        rules);
  }
}
