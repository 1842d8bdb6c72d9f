package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import org.ensemblerules.gear.Element;
import org.ensemblerules.ruleset.CautionRow;
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
    Set<CautionRow> rows = new LinkedHashSet<>();
    elements.forEach(element -> rows.addAll(table.with(element, Set.of())));
    return of(rows);
  }

  /**
   * Writes the cautions of rows.
   *
   * @param rows the rows; not null
   * @return the text; empty if there is no row
   */
  public static String of(Collection<CautionRow> rows) {
    TextPage page = new TextPage();
    Set<String> texts = new LinkedHashSet<>();
    rows.forEach(row -> texts.add(row.text()));
    if (!texts.isEmpty()) {
      page.line("CAUTIONS");
      texts.forEach(text -> page.wrapped("  - ", PlainWords.sentence(text)));
    }
    return page.toString();
  }
}
