package org.ensemblerules.fleet;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.MemberSet;
import org.ensemblerules.issue.SetCheck;
import org.ensemblerules.issue.SetPiece;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.source.InvalidValueException;

/** Puts members, what they have and the spares together once all elements are counted. */
final class ReadinessOf {
  private record Wanted(ElementKind kind, Use use) {}

  private record Gap(int set, Optional<String> size) {}

  private final ImmutableList<Member> members;
  private final SetCheck check;
  private final SizeTable sizes;

  ReadinessOf(List<Member> members, SetCheck check, SizeTable sizes) {
    Set<String> names = new HashSet<>();
    members.forEach(
        member ->
            InvalidValueException.require(
                names.add(member.name()), "Readiness.members", member.name(), "each member once"));
    this.members = ImmutableList.sortedCopyOf(members);
    this.check = check;
    this.sizes = sizes;
  }

  Readiness counted(ReadinessCounting counting) {
    Set<ElementId> repeated = counting.repeated();
    Map<String, List<SetPiece>> issued = new HashMap<>();
    Map<Wanted, List<SetPiece>> spares = new HashMap<>();
    for (SetPiece piece : counting.pieces()) {
      piece
          .whereabouts()
          .holder()
          .ifPresent(
              holder -> issued.computeIfAbsent(holder, none -> new ArrayList<>()).add(piece));
      if (piece.whereabouts().isSpare()
          && piece.isIn()
          && !repeated.contains(piece.element().id())) {
        spares
            .computeIfAbsent(
                new Wanted(piece.element().kind(), piece.element().use()),
                none -> new ArrayList<>())
            .add(piece);
      }
    }
    List<MemberSet> sets = new ArrayList<>();
    for (Member member : members) {
      for (Use use : member.uses()) {
        sets.add(check.of(member, use, issued.getOrDefault(member.name(), List.of()), repeated));
      }
    }
    members.forEach(member -> issued.remove(member.name()));
    return new Readiness(
        counting.counts(),
        helped(sets, spares),
        issued.values().stream().flatMap(List::stream).sorted().toList(),
        repeated);
  }

  private List<ReadyMember> helped(List<MemberSet> sets, Map<Wanted, List<SetPiece>> spares) {
    List<Map<ElementKind, Optional<SetPiece>>> found = new ArrayList<>();
    Map<Wanted, List<Gap>> gaps = new HashMap<>();
    for (MemberSet set : sets) {
      for (ElementKind kind : set.lacking()) {
        gaps.computeIfAbsent(new Wanted(kind, set.use()), none -> new ArrayList<>())
            .add(new Gap(found.size(), set.member().size(kind)));
      }
      found.add(new EnumMap<>(ElementKind.class));
    }
    gaps.forEach(
        (wanted, those) -> {
          List<Optional<SetPiece>> handed =
              new SpareSearch(wanted.kind(), sizes, spares.getOrDefault(wanted, List.of()))
                  .handOut(those.stream().map(Gap::size).toList());
          for (int i = 0; i < those.size(); i++) {
            found.get(those.get(i).set()).put(wanted.kind(), handed.get(i));
          }
        });
    ImmutableList.Builder<ReadyMember> ready = ImmutableList.builder();
    for (int i = 0; i < sets.size(); i++) {
      ready.add(new ReadyMember(sets.get(i), found.get(i)));
    }
    return ready.build();
  }
}
