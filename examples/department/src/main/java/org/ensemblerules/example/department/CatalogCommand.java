package org.ensemblerules.example.department;

import java.util.concurrent.Callable;
import org.ensemblerules.tables.CatalogJson;
import org.ensemblerules.tables.ShippedWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** What can be entered, for programs that draw a form. */
@Command(
    name = "catalog",
    description =
        "Prints as JSON what can be entered of each element: parts, defects and how they are"
            + " measured, criteria, checks, who may do what, and the words for each code.")
final class CatalogCommand implements Callable<Integer> {
  @Mixin private final RulesOption rulesOption = new RulesOption();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Override
  public Integer call() {
    spec.commandLine()
        .getOut()
        .println(CatalogJson.write(rulesOption.rules(spec).catalog(), ShippedWords.english()));
    return ExitCodes.ALL_READ;
  }
}
