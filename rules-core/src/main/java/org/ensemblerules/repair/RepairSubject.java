package org.ensemblerules.repair;

import java.util.Objects;
import org.ensemblerules.defect.DefectKind;

/**
 * What a limit of repair is about.
 *
 * @since 0.1
 */
public sealed interface RepairSubject {
  /** Any damage at the place. */
  record AnyDamage() implements RepairSubject {
    @Override
    public String text() {
      return "ANY_DAMAGE";
    }
  }

  /**
   * One kind of damage. Where it is found, the limit holds for every other repair at the same place
   * as well.
   *
   * @param defect what is wrong; not null
   */
  record Damage(DefectKind defect) implements RepairSubject {
    /** Checks for null. */
    public Damage {
      Objects.requireNonNull(defect, "defect");
    }

    @Override
    public String text() {
      return "DAMAGE " + defect;
    }
  }

  /** The part at the place being replaced, for whatever reason. */
  record Replacement() implements RepairSubject {
    @Override
    public String text() {
      return "REPLACEMENT";
    }
  }

  /** A liner sewn shut after it was opened for its inspection. */
  record LinerOpened() implements RepairSubject {
    @Override
    public String text() {
      return "LINER_OPENED";
    }
  }

  /**
   * Returns the subject on one line.
   *
   * @return the text; never null
   */
  String text();
}
