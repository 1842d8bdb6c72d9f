package org.ensemblerules.example.department;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collector;
import org.ensemblerules.DepartmentRules;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.example.department.demo.DemoRoster;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SetTable;
import org.ensemblerules.issue.SizeFit;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.tables.ListsJson;
import org.ensemblerules.tables.message.SetEntry;
import picocli.CommandLine.Option;

/**
 * Who wears gear, and what their sets must be. For the invented department its own lists are taken
 * where none are named; for other gear what is not named is not known.
 */
final class MembersOption {
  @Option(
      names = "--members",
      paramLabel = "FILE",
      description = "JSON Lines file of members, with the sizes and sets that they need.")
  private Optional<String> members = Optional.empty();

  @Option(
      names = "--sets",
      paramLabel = "FILE",
      description =
          "JSON Lines file of what sets must have, where their elements must be shown to meet, and"
              + " which sizes fit whom.")
  private Optional<String> sets = Optional.empty();

  @Option(
      names = "--fittings",
      paramLabel = "FILE",
      description = "JSON Lines file of how elements were seen to meet on the members.")
  private Optional<String> fittings = Optional.empty();

  /** Who wears gear, and what their sets must be. */
  record Wearers(List<Member> members, SetTable sets, SizeTable sizes, List<Fitting> fittings) {
    /** Tells who is ready on the day that a department is asked about. */
    Collector<JudgedElement, ?, Readiness> readiness(DepartmentRules department) {
      return department.readiness(members, department.sets(sets, sizes, fittings), sizes);
    }
  }

  /** Reads the lists. */
  Wearers read(KeptLists lists, boolean demo) throws IOException {
    List<Member> who = demo ? DemoRoster.members() : List.of();
    if (members.isPresent()) {
      who = lists.good(members.get(), ListsJson.MEMBERS);
    }
    SetTable table = demo ? DemoPolicies.sets() : SetTable.of(List.of(), List.of());
    SizeTable sizes = demo ? DemoPolicies.sizes() : SizeTable.of(List.of());
    if (sets.isPresent()) {
      List<SetRow> rows = new ArrayList<>();
      List<Join> joins = new ArrayList<>();
      List<SizeFit> fits = new ArrayList<>();
      for (SetEntry entry : lists.whole(sets.get(), ListsJson.SETS)) {
        if (entry instanceof SetEntry.Needs needs) {
          rows.add(needs.row());
        } else if (entry instanceof SetEntry.Meets meets) {
          joins.add(meets.join());
        } else {
          fits.add(((SetEntry.Fits) entry).fit());
        }
      }
      table = lists.made(() -> SetTable.of(rows, joins));
      sizes = lists.made(() -> SizeTable.of(fits));
    }
    List<Fitting> looks = demo ? DemoRoster.fittings() : List.of();
    if (fittings.isPresent()) {
      looks = lists.good(fittings.get(), ListsJson.FITTINGS);
    }
    return new Wearers(who, table, sizes, looks);
  }
}
