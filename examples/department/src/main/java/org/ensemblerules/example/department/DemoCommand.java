package org.ensemblerules.example.department;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.DepartmentReport;
import org.ensemblerules.example.department.report.Judged;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.verdict.Assess;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The main job: from the inspections of all gear to explained verdicts. */
@Command(
    name = "demo",
    description = "Judges all gear of the invented department and reports on it.")
final class DemoCommand implements Callable<Integer> {
  @Mixin private final DemoOptions options = new DemoOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException {
    return run(options, spec);
  }

  static int run(DemoOptions options, CommandSpec spec) throws IOException {
    refuseToOverwrite(options, spec);
    RuleSet edition = options.rules().rules(spec);
    RuleSet rules = options.overlay().over(edition, options.asOf());
    // What the department did is the same whatever stands beside the edition.
    List<DemoElement> elements = DemoDepartment.elements(edition);
    List<Judged> judged = new ArrayList<>();
    for (DemoElement element : elements) {
      judged.add(
          new Judged(
              Optional.of(element.story()),
              Assess.assess(rules, element.assessment(), options.asOf())));
    }
    write(options.out(), judged.stream().map(one -> VerdictJson.write(one.verdict())).toList());
    if (options.department().isPresent()) {
      write(
          options.department().get(),
          elements.stream().map(DemoElement::assessment).map(AssessmentJson::write).toList());
    }
    spec.commandLine()
        .getOut()
        .print(DepartmentReport.of(DemoDepartment.NAME, options.asOf(), rules.identity(), judged));
    spec.commandLine().getOut().println(judged.size() + " verdicts are in " + options.out() + ".");
    return ExitCodes.ALL_READ;
  }

  private static void write(Path path, List<String> lines) throws IOException {
    try (OutFile file = OutFile.create(path)) {
      for (String line : lines) {
        file.line(line);
      }
      file.finish();
    }
  }

  private static void refuseToOverwrite(DemoOptions options, CommandSpec spec) throws IOException {
    options.overlay().refuseToOverwrite(spec, "--out", options.out());
    if (options.department().isPresent()) {
      Path department = options.department().get();
      options.overlay().refuseToOverwrite(spec, "--write", department);
      if (Input.isSame(options.out(), department)) {
        throw new ParameterException(
            spec.commandLine(),
            "--write: found the file that --out names too, allowed: another file");
      }
    }
  }
}
