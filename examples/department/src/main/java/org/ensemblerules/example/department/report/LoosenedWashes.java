package org.ensemblerules.example.department.report;

import java.util.List;
import org.ensemblerules.GearRules;
import org.ensemblerules.history.LoosenedWash;
import org.ensemblerules.schedule.ServiceRecord;

/** The washes that what is due rests on, and that count only by a manufacturer's instructions. */
final class LoosenedWashes {
  private LoosenedWashes() {}

  /** Writes them with their heading; nothing if there is none. */
  static void write(TextPage page, GearRules rules, List<ServiceRecord> records) {
    boolean headed = false;
    for (ServiceRecord record : records) {
      for (LoosenedWash wash :
          rules.rules().validity().loosened(record.element(), record.history())) {
        if (!headed) {
          page.blank();
          page.line("WASHES HELD TO A LOOSER LIMIT BY THE MANUFACTURER'S INSTRUCTIONS");
          headed = true;
        }
        page.wrapped("  " + record.element().id() + "  ", PlainWords.sentence(wash.text()));
      }
    }
  }
}
