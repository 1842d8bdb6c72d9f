package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.JsonFault;
import org.ensemblerules.tables.JsonLines;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Reads the lists that are kept beside the records of gear. */
final class KeptLists {
  private final InputStream in;
  private final CommandSpec spec;
  private final JsonOption json;
  private int bad;

  KeptLists(InputStream in, CommandSpec spec, JsonOption json) {
    this.in = in;
    this.spec = spec;
    this.json = json;
  }

  /** The good entries of a list in which one fewer makes no answer milder; bad ones are told. */
  <T> List<T> good(String file, JsonLines.Reading<T> reading) throws IOException {
    List<T> entries = new ArrayList<>();
    try (JsonLines<T> lines = Input.open(file, in, reading)) {
      GoodLines<T> good = new GoodLines<>(file, lines, entry -> "", spec, json);
      good.forEachRemaining(entries::add);
      bad += good.bad();
    }
    return entries;
  }

  /**
   * All entries of a list in which one fewer could make an answer milder.
   *
   * @throws RefusedException if one is bad; it lists every fault
   */
  <T> List<T> whole(String file, JsonLines.Reading<T> reading) throws IOException {
    List<T> entries = new ArrayList<>();
    List<String> faults = new ArrayList<>();
    try (JsonLines<T> lines = Input.open(file, in, reading)) {
      lines.stream()
          .forEach(
              entry -> {
                if (entry instanceof JsonLines.Line<T> line) {
                  entries.add(line.value());
                } else if (entry instanceof JsonLines.BadLine<T> refused) {
                  refused.faults().stream().map(JsonFault::toString).forEach(faults::add);
                }
              });
    }
    if (!faults.isEmpty()) {
      throw new RefusedException(faults);
    }
    return entries;
  }

  /** Makes something of entries; what cannot be is a fault of the command line. */
  <T> T made(Supplier<T> maker) {
    try {
      return maker.get();
    } catch (InvalidValueException e) {
      throw new ParameterException(spec.commandLine(), e.getMessage(), e);
    }
  }

  /** The exit code of a command whose own lines came to one. */
  int exitCode(int own) {
    return bad == 0 ? own : Math.max(own, ExitCodes.BAD_LINES);
  }
}
