package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import java.util.List;
import java.util.function.Supplier;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.defect.Finding;

/**
 * What checks and washes themselves show to be wrong, and which limits washes were spared, as
 * {@link Validity} has it.
 *
 * @since 0.1
 */
public final class Shown {
  private final Evidence evidence;
  private final Validity validity;
  private final Supplier<ImmutableList<Finding>> all = Suppliers.memoize(() -> by(Event.class));
  private final Supplier<ImmutableList<Finding>> byWashes =
      Suppliers.memoize(() -> by(WorkEvent.Cleaned.class));

  Shown(Evidence evidence, Validity validity) {
    this.evidence = evidence;
    this.validity = validity;
  }

  /**
   * Lists what checks and washes themselves show to be wrong, as {@link Validity#findings} does.
   *
   * @return the findings in the order of the history, each once; never null
   */
  public List<Finding> all() {
    return all.get();
  }

  /**
   * Lists what the washes themselves show to be wrong.
   *
   * @return the findings in the order of the history, each once; never null
   */
  public List<Finding> byWashes() {
    return byWashes.get();
  }

  /**
   * Lists what a check or a wash itself shows to be wrong.
   *
   * @param event the event; not null
   * @return the findings; empty for what shows none
   */
  public List<Finding> by(Event event) {
    if (event instanceof WorkEvent.Cleaned done) {
      // A wash of which no particulars are known shows nothing.
      return done.wash().isPresent() && wash(done) instanceof WashAnswer.OutsideLimits outside
          ? Validity.findings(done, outside).toList()
          : List.of();
    }
    return event instanceof LookEvent.Checked done ? validity.findings(done).toList() : List.of();
  }

  private <E extends Event> ImmutableList<Finding> by(Class<E> kind) {
    ImmutableSet.Builder<Finding> shown = ImmutableSet.builder();
    for (E event : evidence.history().events(kind)) {
      shown.addAll(by(event));
    }
    return shown.build().asList();
  }

  private WashAnswer wash(WorkEvent.Cleaned done) {
    return evidence.judgment(done).flatMap(Judgment::wash).orElseGet(WashAnswer.NoRule::new);
  }

  /**
   * Lists the washes that keep a limit only because a manufacturer's instructions put it in place
   * of a stricter one, as {@link Validity#loosened} does.
   *
   * @return the washes in the order of the history, once for each such limit; never null
   */
  public List<LoosenedWash> loosened() {
    ImmutableList.Builder<LoosenedWash> loosened = ImmutableList.builder();
    for (WorkEvent.Cleaned done : evidence.history().events(WorkEvent.Cleaned.class)) {
      // A wash of which no particulars are known departed from no limit that another spares it.
      if (done.wash().isPresent()) {
        Validity.loosened(done, wash(done)).forEach(loosened::add);
      }
    }
    return loosened.build();
  }
}
