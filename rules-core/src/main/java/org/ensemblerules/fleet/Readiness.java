package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.ImmutableSortedSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collector;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.issue.SetPiece;
import org.ensemblerules.issue.SizeTable;

/**
 * Who is ready, by station, kind and use, and member by member.
 *
 * @param counts the numbers of each group, in order; what was disposed of is not counted; not null
 * @param members each member's sets, by station and name; not null
 * @param strangers the elements whose holder is not among the members, by their names; not null
 * @param repeated the ids that more than one element has; these count for no set and as no spare;
 *     not null
 * @since 0.1
 */
public record Readiness(
    Map<ReadyGroup, ReadyCount> counts,
    List<ReadyMember> members,
    List<SetPiece> strangers,
    Set<ElementId> repeated) {
  /** Copies the collections. */
  public Readiness {
    counts = ImmutableSortedMap.copyOf(counts);
    members = ImmutableList.copyOf(members);
    strangers = ImmutableList.copyOf(strangers);
    repeated = ImmutableSortedSet.copyOf(repeated);
  }

  /**
   * Returns a collector that keeps of each element what a set has to know of it.
   *
   * @param members the members, in any order; not null
   * @param check what a set must have; not null
   * @param sizes which sizes fit whom; not null
   * @return the collector; it may be used in parallel; never null
   * @throws org.ensemblerules.source.InvalidValueException if two members have one name
   */
  public static Collector<JudgedElement, ?, Readiness> collector(
      List<Member> members, SetCheck check, SizeTable sizes) {
    ReadinessOf of = new ReadinessOf(members, check, sizes);
    return Collector.of(
        ReadinessCounting::new,
        ReadinessCounting::add,
        ReadinessCounting::with,
        of::counted,
        Collector.Characteristics.UNORDERED);
  }

  /**
   * Lists the members who cannot be sent out in some set of theirs.
   *
   * @return their sets, by station and name; never null
   */
  public List<ReadyMember> notReady() {
    return members.stream().filter(member -> !member.set().isUsable()).toList();
  }
}
