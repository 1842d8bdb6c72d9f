package org.ensemblerules.example.benchmarks;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.ensemblerules.example.department.demo.DemoDepartment;
import org.ensemblerules.tables.AssessmentJson;
import org.ensemblerules.tables.VerdictJson;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Verdict;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;

/** JSON both ways, and the same bytes read and written as trees that nobody understands. */
@State(Scope.Thread)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class JsonBenchmark {
  private final ObjectMapper mapper = new ObjectMapper();
  private final List<String> lines = new ArrayList<>();
  private final List<Verdict> verdicts = new ArrayList<>();
  private final List<JsonNode> trees = new ArrayList<>();

  /** Made by the harness. */
  public JsonBenchmark() {}

  /**
   * Writes what will be read.
   *
   * @param gear the gear
   * @throws JsonProcessingException never: the library wrote it
   */
  @Setup
  public void prepare(Gear gear) throws JsonProcessingException {
    for (Assessment one : gear.all) {
      Verdict verdict = gear.rules.assess(one, DemoDepartment.AS_OF);
      lines.add(AssessmentJson.write(one));
      verdicts.add(verdict);
      trees.add(mapper.readTree(VerdictJson.write(verdict)));
    }
  }

  /**
   * Reads an assessment.
   *
   * @param gear the gear
   * @return the assessment
   */
  @Benchmark
  public Assessment read(Gear gear) {
    return AssessmentJson.read("assessment", lines.get(gear.turn())).orElseThrow();
  }

  /**
   * Writes a verdict.
   *
   * @param gear the gear
   * @return the line
   */
  @Benchmark
  public String writeVerdict(Gear gear) {
    return VerdictJson.write(verdicts.get(gear.turn()));
  }

  /**
   * Reads an assessment, judges it and writes the verdict.
   *
   * @param gear the gear
   * @return the line
   */
  @Benchmark
  public String lineInVerdictOut(Gear gear) {
    Assessment one = AssessmentJson.read("assessment", lines.get(gear.turn())).orElseThrow();
    return VerdictJson.write(gear.rules.assess(one, DemoDepartment.AS_OF));
  }

  /**
   * Reads the same line as a tree, and writes the tree of the same verdict.
   *
   * @param gear the gear
   * @param hole takes the tree read
   * @return the line
   * @throws JsonProcessingException never: the library wrote it
   */
  @Benchmark
  public String treeInTreeOut(Gear gear, Blackhole hole) throws JsonProcessingException {
    int turn = gear.turn();
    hole.consume(mapper.readTree(lines.get(turn)));
    return mapper.writeValueAsString(trees.get(turn));
  }
}
