package org.ensemblerules.example.department.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.record.PlaceCode;
import org.ensemblerules.ruleset.AdoptionAnswer;
import org.ensemblerules.ruleset.AdoptionRow;
import org.ensemblerules.ruleset.AdoptionTable;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.tables.set.LoadedTables;

/** What the law of a place asks to go by, for people. */
public final class AdoptionText {
  private AdoptionText() {}

  /**
   * Writes what holds, subject by subject.
   *
   * @param tables the editions there are; not null
   * @param adoptions what laws ask; not null
   * @param place the place; not null
   * @param day the day; not null
   * @param bought when the gear was bought; empty if not known
   * @return the text; never null
   */
  public static String of(
      LoadedTables tables,
      AdoptionTable adoptions,
      PlaceCode place,
      LocalDate day,
      Optional<LocalDate> bought) {
    TextPage page = new TextPage();
    page.line("Rules that the law of " + place + " names, as of " + day);
    RowNotes rows = new RowNotes();
    for (Subject subject : Subject.values()) {
      page.blank();
      page.line(PlainWords.of(subject));
      AdoptionAnswer answer = adoptions.inForce(place, day, subject);
      if (answer instanceof AdoptionAnswer.Rules held) {
        for (AdoptionAnswer.Held one : held.rules()) {
          Optional<String> edition =
              AdoptionTable.choose(one.row(), tables.editions(subject), day, bought)
                  .map(id -> tables.edition(id).map(Edition::title).orElseGet(id::value));
          page.wrapped("  - ", text(one, edition) + " " + rows.cite(List.of(one.row())));
        }
      } else {
        page.wrapped("  - ", "not known; the authority having jurisdiction says what holds");
      }
    }
    page.blank();
    rows.write(page);
    page.blank();
    page.wrapped(
        "",
        "Several rules can hold side by side, and the stricter need not be the one that counts:"
            + " whoever asks for a verdict chooses. This is no legal advice.");
    return page.toString();
  }

  private static String text(AdoptionAnswer.Held held, Optional<String> edition) {
    AdoptionRow row = held.row();
    return row.where()
        + ": "
        + PlainWords.of(row.kind())
        + edition.map(title -> ", " + title).orElse("")
        + " ("
        + row.from().map(from -> "from " + from).orElse("first day not seen")
        + row.before().map(before -> ", before " + before).orElse("")
        + ")"
        + (held.stale() ? ", reviewed only through " + row.provenance().reviewedThrough() : "")
        + ". "
        + row.covers();
  }
}
