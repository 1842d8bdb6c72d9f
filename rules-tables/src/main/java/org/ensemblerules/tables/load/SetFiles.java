package org.ensemblerules.tables.load;

import java.io.IOException;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.JsonFault;
import org.ensemblerules.tables.TableFiles;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonLimits;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.json.UnknownFields;

/** Opens the files of a set. */
final class SetFiles {
  private static final JsonReader READER =
      new JsonReader(JsonLimits.ofDocument(4_000_000), UnknownFields.REFUSED);
  // No path leaves its set by such names.
  private static final Pattern FOLDER = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern FILE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*\\.json");

  private final TableFiles files;
  private final Faults faults;

  SetFiles(TableFiles files, Faults faults) {
    this.files = files;
    this.faults = faults;
  }

  /** Opens a file that every set has. */
  Optional<JsonCursor> open(String path) {
    return open(
        path,
        () ->
            faults.add(
                new JsonFault(FaultCode.MISSING, path, "", "no such file", "a file of this name")));
  }

  /** Opens a file that another file names; if it is missing, the fault lies there. */
  Optional<JsonCursor> open(String path, JsonCursor namedAt) {
    return open(
        path,
        () ->
            namedAt.fault(
                FaultCode.MISSING, "no file " + path, "the name of a file that is there"));
  }

  private Optional<JsonCursor> open(String path, Runnable missing) {
    try {
      Optional<byte[]> bytes = files.read(path);
      if (bytes.isEmpty()) {
        missing.run();
      }
      return bytes.flatMap(text -> READER.open(path, text, faults));
    } catch (IOException e) {
      faults.add(
          new JsonFault(
              FaultCode.UNREADABLE,
              path,
              "",
              "a failure to read: " + e,
              "a file that can be read"));
      return Optional.empty();
    }
  }

  static Optional<String> folderName(JsonCursor at) {
    return name(at, FOLDER, "groups of a-z and 0-9, hyphens");
  }

  static Optional<String> fileName(JsonCursor at) {
    return name(at, FILE, "groups of a-z and 0-9, hyphens, ending in .json");
  }

  private static Optional<String> name(JsonCursor at, Pattern form, String allowed) {
    return at.parsed(
        text -> {
          InvalidValueException.require(form.matcher(text).matches(), "name", text, allowed);
          return text;
        });
  }
}
