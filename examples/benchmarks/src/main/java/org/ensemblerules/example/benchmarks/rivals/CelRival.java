package org.ensemblerules.example.benchmarks.rivals;

import dev.cel.common.CelValidationException;
import dev.cel.common.types.ListType;
import dev.cel.common.types.MapType;
import dev.cel.common.types.SimpleType;
import dev.cel.compiler.CelCompiler;
import dev.cel.compiler.CelCompilerFactory;
import dev.cel.parser.CelStandardMacro;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelRuntime;
import dev.cel.runtime.CelRuntimeFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An expression of the Common Expression Language over a map from place and defect to lines. */
public final class CelRival implements Rival<Map<String, Object>> {
  private static final String EXPRESSION =
      "cell in lines ? lines[cell].filter(line, size > line.over && size <= line.upTo) : []";

  private final Map<String, List<Map<String, Object>>> lines = new HashMap<>();
  private final CelRuntime.Program program;

  /**
   * Fills the map and compiles the expression.
   *
   * @param table the lines; not null
   */
  public CelRival(NeutralTable table) {
    for (Line line : table.lines()) {
      lines
          .computeIfAbsent(
              line.place() + " " + line.defect() + " " + line.by(), cell -> new ArrayList<>())
          .add(Map.of("over", line.over(), "upTo", line.upTo(), "row", line.row()));
    }
    CelCompiler compiler =
        CelCompilerFactory.standardCelCompilerBuilder()
            .setStandardMacros(CelStandardMacro.FILTER)
            .addVar(
                "lines",
                MapType.create(
                    SimpleType.STRING,
                    ListType.create(MapType.create(SimpleType.STRING, SimpleType.DYN))))
            .addVar("cell", SimpleType.STRING)
            .addVar("size", SimpleType.INT)
            .build();
    try {
      // The newer one goes through the whole map each time.
      program =
          CelRuntimeFactory.legacyCelRuntimeBuilder()
              .build()
              .createProgram(compiler.compile(EXPRESSION).getAst());
    } catch (CelValidationException | CelEvaluationException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public Map<String, Object> input(Asked asked) {
    return Map.of(
        "lines",
        lines,
        "cell",
        asked.place() + " " + asked.defect() + " " + asked.told().by(),
        "size",
        asked.told().whole());
  }

  @Override
  public String answer(Map<String, Object> input) {
    try {
      return program.eval(input) instanceof List<?> found
              && !found.isEmpty()
              && found.get(0) instanceof Map<?, ?> line
          ? String.valueOf(line.get("row"))
          : "";
    } catch (CelEvaluationException e) {
      throw new IllegalStateException(e);
    }
  }
}
