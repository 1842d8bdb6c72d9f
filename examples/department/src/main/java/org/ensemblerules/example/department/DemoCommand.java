package org.ensemblerules.example.department;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.ensemblerules.GearRules;
import org.ensemblerules.effect.DoerRegister;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.example.department.demo.DemoElement;
import org.ensemblerules.example.department.report.DepartmentReport;
import org.ensemblerules.example.department.report.Judged;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.DoerRegisterJson;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.verdict.Assessment;
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
    GearRules edition = options.rules().rules(spec);
    GearRules rules = options.overlay().over(edition, options.asOf());
    // What the department did is the same whatever stands beside the edition.
    List<DemoElement> elements = DemoDepartment.elements(edition);
    List<Judged> judged = new ArrayList<>();
    for (DemoElement element : elements) {
      judged.add(
          new Judged(
              Optional.of(element.story()), rules.assess(element.assessment(), options.asOf())));
    }
    write(
        options.out(),
        judged.stream()
            .map(one -> VerdictJson.write(one.verdict(), ShippedWords.english()))
            .toList());
    writeDepartment(options, rules, elements.stream().map(DemoElement::assessment).toList());
    spec.commandLine()
        .getOut()
        .print(
            DepartmentReport.of(
                DemoDepartment.NAME, options.asOf(), rules.identity(), judged, options.everyOut()));
    spec.commandLine()
        .getOut()
        .printf(
            "%nThe rest: demo --out-of-service lists all that are out, explain ID tells one in"
                + " full,%ndue what is due, and all %d verdicts are in %s.%n",
            judged.size(), options.out());
    return ExitCodes.ALL_READ;
  }

  private static void writeDepartment(DemoOptions options, GearRules rules, List<Assessment> gear)
      throws IOException {
    DoerRegister register =
        options.doers().isPresent()
            ? DoerRegister.of(
                gear.stream().flatMap(one -> one.history().doers().stream()).distinct().toList())
            : DoerRegister.empty();
    if (options.doers().isPresent()) {
      write(options.doers().get(), List.of(DoerRegisterJson.write(register)));
    }
    if (options.department().isPresent()) {
      write(
          options.department().get(),
          gear.stream()
              .map(
                  one ->
                      options.inShort()
                          ? AssessmentJson.write(one, register, rules)
                          : AssessmentJson.write(one, register))
              .toList());
    }
  }

  private static void write(Path path, List<String> lines) throws IOException {
    try (OutFile file = OutFile.create(path)) {
      for (String line : lines) {
        file.line(line);
      }
      file.finish();
    }
  }

  /** Three files may be written; each has a place of its own. */
  private static void refuseToOverwrite(DemoOptions options, CommandSpec spec) throws IOException {
    Map<String, Path> written = new LinkedHashMap<>();
    written.put("--out", options.out());
    options.department().ifPresent(path -> written.put("--write", path));
    options.doers().ifPresent(path -> written.put("--write-doers", path));
    List<Map.Entry<String, Path>> files = List.copyOf(written.entrySet());
    for (int i = 0; i < files.size(); i++) {
      Map.Entry<String, Path> file = files.get(i);
      options.overlay().refuseToOverwrite(spec, file.getKey(), file.getValue());
      for (Map.Entry<String, Path> earlier : files.subList(0, i)) {
        if (Input.isSame(earlier.getValue(), file.getValue())) {
          throw new ParameterException(
              spec.commandLine(),
              file.getKey()
                  + ": found the file that "
                  + earlier.getKey()
                  + " names too, allowed: another file");
        }
      }
    }
  }
}
