package org.ensemblerules.shipped;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The table files as they stand in the source tree, read as plain JSON. */
public final class TableTexts {
  private static final Path FOLDER = Path.of("src/main/resources/org/ensemblerules/tables");
  private static final ObjectMapper JSON = new ObjectMapper();

  private TableTexts() {}

  /**
   * A table file.
   *
   * @param path its path in the set
   * @param root what it holds
   */
  public record Text(String path, JsonNode root) {
    /**
     * Returns the name of the table.
     *
     * @return the name; empty for a file that is no table
     */
    public String table() {
      return root.path("table").asText();
    }

    /**
     * Returns the edition of the table.
     *
     * @return the edition; empty if it has none
     */
    public String edition() {
      return root.path("edition").asText();
    }
  }

  /**
   * Returns the table files, whether the index names their folder or not.
   *
   * @return the files by path
   */
  public static List<Text> all() {
    return all(Path.of(""));
  }

  /**
   * Returns the table files for a module that is not theirs.
   *
   * @param module where theirs is
   * @return the files by path
   */
  public static List<Text> all(Path module) {
    Path folder = module.resolve(FOLDER);
    try (Stream<Path> paths = Files.walk(folder)) {
      List<Text> texts = new ArrayList<>();
      for (Path path : paths.filter(each -> each.toString().endsWith(".json")).sorted().toList()) {
        JsonNode root = JSON.readTree(Files.readAllBytes(path));
        if (root.has("table")) {
          texts.add(new Text(folder.relativize(path).toString().replace('\\', '/'), root));
        }
      }
      return texts;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The ids of all sources and pages that a basis in some file names. */
  static Set<String> sourcesCited() {
    Set<String> cited = new TreeSet<>();
    for (Text text : all()) {
      for (JsonNode basis : text.root().findValues("basis")) {
        cited.add(basis.path("source").asText());
        cited.add(basis.path("about").asText());
        basis.path("pages").forEach(page -> cited.add(page.asText()));
      }
    }
    return cited;
  }

  /** The notes of all files, one after the other. */
  static String notes() {
    StringBuilder notes = new StringBuilder();
    for (Text text : all()) {
      text.root().findValuesAsText("note").forEach(note -> notes.append(note).append('\n'));
    }
    return notes.toString();
  }
}
