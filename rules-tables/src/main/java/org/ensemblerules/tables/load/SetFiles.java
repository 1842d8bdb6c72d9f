package org.ensemblerules.tables.load;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.util.Optional;
import java.util.regex.Pattern;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.json.Faults;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonLimits;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.json.UnknownFields;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.set.TableFiles;

/** Opens the files of a set. */
final class SetFiles {
  private static final JsonReader READER =
      new JsonReader(JsonLimits.ofDocument(TableFiles.MOST_BYTES), UnknownFields.REFUSED);
  // No path leaves its set by such names.
  private static final Pattern FOLDER = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Pattern FILE = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*\\.json");

  private static final int LONGEST_NAME = 100;
  private static final int MOST_FILES = 2_000;

  private final TableFiles files;
  private final Faults faults;
  private int opened;

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
    opened++;
    if (opened > MOST_FILES) {
      if (opened == MOST_FILES + 1) {
        faults.add(
            new JsonFault(
                path, "", "a file after " + MOST_FILES + " others", "no more in one set"));
      }
      return Optional.empty();
    }
    try {
      Optional<byte[]> bytes = files.read(path);
      if (bytes.isEmpty()) {
        missing.run();
      }
      return bytes.flatMap(text -> READER.open(path, text, faults));
    } catch (FileSystemException e) {
      faults.add(
          new JsonFault(
              FaultCode.UNREADABLE,
              path,
              "",
              e.getReason() == null ? e.getClass().getSimpleName() : e.getReason(),
              "a file in the folder of the set, of at most " + TableFiles.MOST_BYTES + " bytes"));
      return Optional.empty();
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
          // The length first: the form of a very long name would take the whole stack.
          InvalidValueException.require(
              text.length() <= LONGEST_NAME && form.matcher(text).matches(),
              "name",
              text,
              allowed + ", at most " + LONGEST_NAME + " characters");
          return text;
        });
  }
}
