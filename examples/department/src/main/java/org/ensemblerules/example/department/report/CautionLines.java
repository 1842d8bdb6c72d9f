package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.ruleset.CautionTable;

/** The cautions that hold for elements whatever is done to them, each once. */
public final class CautionLines {
  private CautionLines() {}

  /**
   * Writes the cautions.
   *
   * @param table the cautions there are; not null
   * @param elements the elements written about; not null
   * @return the text; empty if there is no element
   */
  public static String of(CautionTable table, Collection<Element> elements) {
    TextPage page = new TextPage();
    Set<String> texts = new LinkedHashSet<>();
    elements.forEach(
        element -> table.with(element, Set.of()).forEach(row -> texts.add(row.text())));
    if (!texts.isEmpty()) {
      page.line("CAUTIONS");
      texts.forEach(text -> page.wrapped("  - ", PlainWords.sentence(text)));
    }
    return page.toString();
  }
}
