package org.ensemblerules.fleet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.issue.JudgedElement;
import org.ensemblerules.issue.SetPiece;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.Service;

/** Counts elements as they come, and keeps of each what a set has to know. */
final class ReadinessCounting {
  private final Map<ReadyGroup, ReadyCount> counts = new HashMap<>();
  private final List<SetPiece> pieces = new ArrayList<>();
  private final Shared shared = new Shared();

  void add(JudgedElement judged) {
    if (judged.isGone()) {
      return;
    }
    SetPiece piece = SetPiece.of(judged);
    pieces.add(
        new SetPiece(
            piece.element(),
            shared.one(piece.sizes()),
            shared.one(piece.whereabouts()),
            piece.headline(),
            shared.one(piece.goesTo())));
    boolean in = judged.service() == Service.IN;
    Map<OutBecause, Long> because =
        judged.verdict().outBecause().stream()
            .collect(Collectors.toMap(cause -> cause, cause -> 1L));
    counts.merge(
        new ReadyGroup(
            judged.whereabouts().station(), piece.element().kind(), piece.element().use()),
        new ReadyCount(in ? 1 : 0, in ? 0 : 1, because, judged.notices().isEmpty() ? 0 : 1),
        ReadyCount::and);
  }

  ReadinessCounting with(ReadinessCounting other) {
    other.counts.forEach((group, count) -> counts.merge(group, count, ReadyCount::and));
    pieces.addAll(other.pieces);
    return this;
  }

  Map<ReadyGroup, ReadyCount> counts() {
    return counts;
  }

  /** All pieces by their names. */
  List<SetPiece> pieces() {
    return pieces.stream().sorted().toList();
  }

  Set<ElementId> repeated() {
    Set<ElementId> once = new HashSet<>();
    return pieces.stream()
        .map(piece -> piece.element().id())
        .filter(id -> !once.add(id))
        .collect(Collectors.toSet());
  }
}
