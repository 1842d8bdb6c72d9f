package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.example.department.report.DisposalText;
import org.ensemblerules.tables.DisposalJson;
import org.ensemblerules.tables.message.DisposalRequest;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What may become of retired elements. */
@Command(
    name = "disposal",
    description = {
      "Tells which routes of disposal are open to retired elements, and why the others are not.",
      "A bad line is named on the standard error; the others are answered."
    })
final class DisposalCommand implements Callable<Integer> {
  static final String SAMPLE = "disposal-requests.jsonl";

  private final InputStream in;

  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Mixin private final RequestFile file = new RequestFile();
  @Spec private CommandSpec spec = CommandSpec.create();

  DisposalCommand(InputStream in) {
    this.in = in;
  }

  @Override
  public Integer call() throws IOException {
    GearRules rules = rulesOption.rules(spec);
    DisposalText text = new DisposalText();
    return file.answer(
        new RequestFile.Question<>(
            SAMPLE,
            DisposalJson::read,
            DisposalRequest::element,
            false,
            request -> text.of(request, rules.disposal(request.gear())),
            request -> DisposalJson.write(request, rules.disposal(request.gear())),
            text::notes),
        in,
        spec,
        rules);
  }
}
