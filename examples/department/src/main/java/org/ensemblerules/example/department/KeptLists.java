package org.ensemblerules.example.department;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.ensemblerules.source.InvalidValueException;
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
    bad += read(file, reading, entries);
    return entries;
  }

  /**
   * All entries of a list in which one fewer could make an answer milder; bad ones are told.
   *
   * @throws BadFileException if one is bad
   */
  <T> List<T> whole(String file, JsonLines.Reading<T> reading) throws IOException {
    List<T> entries = new ArrayList<>();
    if (read(file, reading, entries) > 0) {
      throw BadFileException.told();
    }
    return entries;
  }

  /** Takes the good entries, tells the bad ones, and says how many those are. */
  private <T> int read(String file, JsonLines.Reading<T> reading, List<T> entries)
      throws IOException {
    try (JsonLines<T> lines = Input.open(file, in, reading)) {
      GoodLines<T> good = new GoodLines<>(file, lines, entry -> "", spec, json);
      good.forEachRemaining(entries::add);
      return good.bad();
    }
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
