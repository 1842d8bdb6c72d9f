package org.ensemblerules.history;

import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import java.util.List;
import java.util.Optional;

/**
 * Which inspections go on with which: each names by its kind and moment the one that was begun. Of
 * two that a name may mean it goes on with none, and so does one that certainly came before.
 */
final class Completions {
  private static final Completions NONE = new Completions(ImmutableListMultimap.of());

  private final ImmutableListMultimap<LookEvent.Inspected, LookEvent.Inspected> byBegun;

  private Completions(ImmutableListMultimap<LookEvent.Inspected, LookEvent.Inspected> byBegun) {
    this.byBegun = byBegun;
  }

  static Completions of(History history) {
    List<LookEvent.Inspected> inspections = history.events(LookEvent.Inspected.class);
    if (!anyGoesOn(inspections)) {
      return NONE;
    }
    ImmutableListMultimap<Moment, LookEvent.Inspected> byMoment =
        Multimaps.index(inspections, LookEvent.Inspected::when);
    ImmutableListMultimap.Builder<LookEvent.Inspected, LookEvent.Inspected> byBegun =
        ImmutableListMultimap.builder();
    for (LookEvent.Inspected done : inspections) {
      List<LookEvent.Inspected> named =
          done.completes().stream()
              .flatMap(when -> byMoment.get(when).stream())
              .filter(begun -> isNamed(begun, done))
              .toList();
      if (named.size() == 1 && done.when().follows(named.get(0).when(), true)) {
        byBegun.put(named.get(0), done);
      }
    }
    return new Completions(byBegun.build());
  }

  private static boolean anyGoesOn(List<LookEvent.Inspected> inspections) {
    for (LookEvent.Inspected done : inspections) {
      if (done.completes().isPresent()) {
        return true;
      }
    }
    return false;
  }

  /** Whether an inspection goes by its kind and moment on with one that was begun. */
  static boolean isNamed(LookEvent.Inspected begun, LookEvent.Inspected completing) {
    return begun.completes().isEmpty()
        && begun.inspection().kind() == completing.inspection().kind()
        && completing.completes().equals(Optional.of(begun.when()));
  }

  /** The inspections that go on with one that was begun, in the order of the history. */
  List<LookEvent.Inspected> of(LookEvent.Inspected begun) {
    return byBegun.get(begun);
  }

  /** The inspection that one goes on with; empty if it stands for itself. */
  Optional<LookEvent.Inspected> begun(LookEvent.Inspected completing) {
    return byBegun.isEmpty()
        ? Optional.empty()
        : byBegun.inverse().get(completing).stream().findFirst();
  }
}
