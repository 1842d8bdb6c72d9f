package org.ensemblerules.example.department.report;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.verdict.Reason;

/**
 * The pages on which the rows of reasons were seen restated, each once, so that one can go there.
 */
final class PagesSeen {
  private PagesSeen() {}

  static void write(TextPage page, Collection<Reason> reasons, Map<SourceId, Source> listed) {
    Map<String, String> citations = new TreeMap<>();
    for (Reason reason : reasons) {
      reason.row().stream()
          .flatMap(row -> row.provenance().basis().pages().stream())
          .forEach(
              id ->
                  citations.put(
                      id.value(),
                      Optional.ofNullable(listed.get(id))
                          .map(Source::citation)
                          .orElse("not listed")));
    }
    if (!citations.isEmpty()) {
      page.blank();
      page.line("PAGES");
      // An address is one word, and so it is not cut.
      citations.forEach((id, citation) -> page.wrapped("  ", id + ": " + citation));
    }
  }
}
