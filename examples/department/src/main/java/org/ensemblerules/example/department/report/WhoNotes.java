package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;

/** Who may do things, cited by a letter, each list written once. */
final class WhoNotes {
  private final Map<String, String> letters = new LinkedHashMap<>();

  /** The letter of a list, as in {@code [b]}. */
  String cite(Collection<PermittedDoer> doers) {
    String who = doers.isEmpty() ? "nobody is named" : PlainWords.who(doers);
    return "["
        + letters.computeIfAbsent(who, each -> Character.toString('a' + letters.size()))
        + "]";
  }

  /** The letter of those whom rows permit. */
  String permitted(Collection<PermissionRow> rows) {
    return cite(rows.stream().map(PermissionRow::doer).toList());
  }

  boolean isEmpty() {
    return letters.isEmpty();
  }

  void write(TextPage page) {
    if (!isEmpty()) {
      page.line("WHO MAY");
      letters.forEach((who, letter) -> page.wrapped("   [" + letter + "] ", who));
    }
  }
}
