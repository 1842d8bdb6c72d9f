package org.ensemblerules.defect;

import com.google.common.collect.Sets;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.source.InvalidValueException;

/**
 * An answer that an open row admits: what the owner's own policy may decide in place of the row.
 *
 * @param effect what may be called for; neither a note nor a cleaning; not null
 * @param afterward the checks that must then be passed afterward, at least; not null
 * @since 0.1
 */
public record Admitted(Effect effect, Set<Check> afterward) {
  /**
   * Checks the effect.
   *
   * @throws InvalidValueException if the effect is a note or a cleaning
   */
  public Admitted {
    Objects.requireNonNull(effect, "effect");
    afterward = Sets.immutableEnumSet(afterward);
    InvalidValueException.require(
        effect.effectKind() != EffectKind.NOTE && effect.effectKind() != EffectKind.CLEAN,
        "Admitted.effect",
        effect.text(),
        "an evaluation, a repair, a replacement or retirement: what is disputed is no less");
  }

  /**
   * Tells whether a row gives this answer.
   *
   * @param row the row of an overlay; not null
   * @return true if it calls for the same, followed by no fewer checks
   */
  boolean isGivenBy(DefectRow row) {
    return effect.equals(row.effect()) && row.afterward().containsAll(afterward);
  }

  /**
   * Returns the answer in words.
   *
   * @return the text; never null
   */
  public String text() {
    return effect.text() + (afterward.isEmpty() ? "" : " followed by " + afterward);
  }
}
