package org.ensemblerules.example.department;

import java.util.LinkedHashMap;
import java.util.Map;

/** What the program's exit codes mean. */
final class ExitCodes {
  /** Everything was read and judged; what the verdicts say does not matter. */
  static final int ALL_READ = 0;

  /** Some lines were bad, the others were judged; or the tables audited are not sound. */
  static final int BAD_LINES = 1;

  /**
   * The command line is wrong, or names an edition, element or inspection that does not exist, or
   * an overlay that is refused.
   */
  static final int USAGE = 2;

  /** A file cannot be read or written, or what is printed cannot, as when its reader goes away. */
  static final int FILE = 3;

  /** A fault of the program itself, or too little memory. */
  static final int FAULT = 4;

  private ExitCodes() {}

  /** What each code means, for the help. */
  static Map<String, String> meanings() {
    Map<String, String> meanings = new LinkedHashMap<>();
    meanings.put(" " + ALL_READ, "everything was read and judged");
    meanings.put(
        " " + BAD_LINES,
        "some lines were bad; the verdicts of the others were written; or the tables are not"
            + " sound");
    meanings.put(
        " " + USAGE,
        "the command line is wrong, or names an edition, element or inspection that does not"
            + " exist, or an overlay that is refused");
    meanings.put(
        " " + FILE,
        "a file cannot be read or written, or what is printed cannot; its reader may have gone");
    meanings.put(" " + FAULT, "a fault of the program itself, or too little memory");
    return meanings;
  }
}
