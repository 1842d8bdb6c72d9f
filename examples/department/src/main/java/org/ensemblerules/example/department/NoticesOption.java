package org.ensemblerules.example.department;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.tables.ListsJson;
import picocli.CommandLine.Option;

/** The safety notices that are not settled. */
final class NoticesOption {
  @Option(
      names = "--notices",
      paramLabel = "FILE",
      description =
          "JSON Lines file of safety notices that are not settled. Default: that of the invented"
              + " department for its own gear, none for other gear.")
  private Optional<String> file = Optional.empty();

  /** Reads the notices. One that cannot be read may touch anything, so that nothing is answered. */
  List<SafetyNotice> read(KeptLists lists, boolean demo) throws IOException {
    if (file.isPresent()) {
      return lists.whole(file.get(), ListsJson.NOTICES);
    }
    return demo ? List.of(DemoPolicies.notice()) : List.of();
  }
}
