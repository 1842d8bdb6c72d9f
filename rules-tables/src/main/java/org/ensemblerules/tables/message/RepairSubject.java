package org.ensemblerules.tables.message;

import java.util.List;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.source.InvalidValueException;

/**
 * What the work is about.
 *
 * @since 0.1
 */
public sealed interface RepairSubject {
  /**
   * Damage that was found.
   *
   * @param findings what was found, at least one; not null
   */
  record Damage(List<Finding> findings) implements RepairSubject {
    /**
     * Copies the list.
     *
     * @throws InvalidValueException if it is empty
     */
    public Damage {
      findings = List.copyOf(findings);
      InvalidValueException.require(
          !findings.isEmpty(), "Damage.findings", findings, "at least one");
    }
  }

  /** A liner that was opened for its complete inspection, and is to be sewn shut. */
  record LinerOpened() implements RepairSubject {}
}
