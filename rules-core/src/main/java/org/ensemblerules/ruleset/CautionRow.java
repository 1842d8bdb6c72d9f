package org.ensemblerules.ruleset;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Use;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * A caution that verdicts carry.
 *
 * @param provenance where the row comes from; not null
 * @param elements the kinds of element it is for; empty for all; not null
 * @param uses the uses it is for; empty for all; not null
 * @param effects the effects it goes with; empty for every verdict; not null
 * @param text the caution, 1 to 500 characters; not null
 * @since 0.1
 */
public record CautionRow(
    Provenance provenance,
    Set<ElementKind> elements,
    Set<Use> uses,
    Set<EffectKind> effects,
    String text)
    implements ComparableRow<CautionRow> {
  /**
   * Checks the text.
   *
   * @throws InvalidValueException if the text is blank or too long
   */
  public CautionRow {
    Objects.requireNonNull(provenance, "provenance");
    elements = Sets.immutableEnumSet(elements);
    uses = Sets.immutableEnumSet(uses);
    effects = Sets.immutableEnumSet(effects);
    InvalidValueException.requireText("CautionRow.text", text, 500);
  }

  @Override
  public List<String> canonical() {
    return List.of(elements.toString(), uses.toString(), effects.toString(), text);
  }

  /** Two cautions for the same gear warn of different things; only the key tells them apart. */
  @Override
  public List<String> topic() {
    return List.of(key().value(), elements.toString(), uses.toString(), effects.toString());
  }

  @Override
  public List<String> words() {
    return List.of(text);
  }

  /** One that says the same wherever the other does, and elsewhere, is the stricter. */
  @Override
  public ComparedFields compareFields(CautionRow other) {
    return ComparedFields.on(text.equals(other.text))
        .applying(wider(elements, other.elements))
        .applying(wider(uses, other.uses))
        .applying(wider(effects, other.effects));
  }

  private static <T> Comparison wider(Set<T> one, Set<T> other) {
    return Comparison.of(holds(one, other), holds(other, one));
  }

  /** An empty set stands for everything. */
  private static <T> boolean holds(Set<T> wide, Set<T> narrow) {
    return wide.isEmpty() || (!narrow.isEmpty() && wide.containsAll(narrow));
  }
}
