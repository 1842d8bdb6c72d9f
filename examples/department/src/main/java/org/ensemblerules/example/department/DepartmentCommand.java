package org.ensemblerules.example.department;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program without a command: the main job on the invented department. */
@Command(
    name = "department",
    description = {
      "Judges protective clothing from what its inspectors saw.",
      "Without a command it does what demo does."
    })
final class DepartmentCommand implements Callable<Integer> {
  @Mixin private final DemoOptions options = new DemoOptions();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() throws IOException {
    return DemoCommand.run(options, spec);
  }
}
