package org.ensemblerules.audit.soundness;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.GearRules;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.RowKey;

/**
 * One finding, and what it must be answered with.
 *
 * @param about the row that the case was made for; not null
 * @param changed the one condition in which it differs from the case in which that row decides;
 *     empty for that case itself
 * @param asked what is asked; not null
 * @param expected the answers, at least one: for each site that can be meant that of the editions,
 *     and those of the rows of overlays that apply or may apply; not null
 * @since 0.1
 */
public record ExampleCase(
    RowKey about, Optional<Condition> changed, Question asked, List<Answer> expected) {

  /** The conditions of a row. */
  public enum Condition {
    /** The kind of element. */
    ELEMENT,
    /** Its use. */
    USE,
    /** The part. */
    PART,
    /** The layer. */
    LAYER,
    /** What is wrong. */
    DEFECT,
    /** How large it is. */
    EXTENT
  }

  /**
   * What is asked.
   *
   * @param element the kind of element; not null
   * @param use its use; not null
   * @param site the part and its layer; not null
   * @param defect what is wrong; not null
   * @param extent how large it is; not null
   */
  public record Question(
      ElementKind element, Use use, Site site, DefectKind defect, Extent extent) {
    /** Checks for nulls. */
    public Question {
      Objects.requireNonNull(element, "element");
      Objects.requireNonNull(use, "use");
      Objects.requireNonNull(site, "site");
      Objects.requireNonNull(defect, "defect");
      Objects.requireNonNull(extent, "extent");
    }
  }

  /**
   * What must be answered for one site.
   *
   * @param kind how the demand arises; not null
   * @param site the site; not null
   * @param row the row that answers; present for a rule, and where a row of an overlay asks for the
   *     extent to be measured
   * @param effect what that row calls for; present exactly if a row is
   */
  public record Answer(Demand.Kind kind, Site site, Optional<RowKey> row, Optional<Effect> effect) {
    /** Checks for nulls. */
    public Answer {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(site, "site");
      Objects.requireNonNull(row, "row");
      Objects.requireNonNull(effect, "effect");
    }
  }

  /** Copies the answers. */
  public ExampleCase {
    Objects.requireNonNull(about, "about");
    Objects.requireNonNull(changed, "changed");
    Objects.requireNonNull(asked, "asked");
    expected = ImmutableList.copyOf(expected);
  }

  /**
   * Tells whether the row that the case was made for decides it.
   *
   * @return true exactly if nothing was changed
   */
  public boolean decides() {
    return changed.isEmpty();
  }

  /**
   * Makes the cases of a rule set.
   *
   * @param rules the rules; not null
   * @return the cases, row by row in table order, the deciding one before its neighbors; never null
   */
  public static List<ExampleCase> of(GearRules rules) {
    return ExampleCases.of(rules);
  }
}
