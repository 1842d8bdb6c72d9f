package org.ensemblerules.audit.words;

import com.google.common.collect.ImmutableList;
import java.util.List;
import org.ensemblerules.audit.difference.ChangeKind;
import org.ensemblerules.audit.difference.FleetEffect;
import org.ensemblerules.words.CodeSet;

/**
 * The codes of what differs between two sets of rules.
 *
 * @since 0.1
 */
public enum AuditCodeSet implements CodeSet {
  /** Codes of {@link ChangeKind}. */
  CHANGE_KIND("changeKind", ChangeKind.values()),
  /** Codes of {@link FleetEffect}. */
  FLEET_EFFECT("fleetEffect", FleetEffect.values());

  private final String jsonName;
  private final ImmutableList<Enum<?>> codes;

  AuditCodeSet(String jsonName, Enum<?>[] codes) {
    this.jsonName = jsonName;
    this.codes = ImmutableList.copyOf(codes);
  }

  @Override
  public String jsonName() {
    return jsonName;
  }

  @Override
  public List<Enum<?>> codes() {
    return codes;
  }
}
