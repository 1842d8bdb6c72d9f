package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSortedMap;
import com.google.common.collect.Maps;
import java.util.List;
import java.util.Map;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.OriginId;

/**
 * Which rules a verdict was computed with.
 *
 * @param editions the edition chosen for each subject; not null
 * @param overlays the overlays laid over them, in the order of their names; not null
 * @param revisions the revision of each table file, by its name; not null
 * @param form the {@linkplain CanonicalRules#FORM form} of the text that the fingerprint is of, 1
 *     or more; where a stored identity does not name it, it is 1. Fingerprints of two forms say
 *     nothing about whether the rules differ
 * @param fingerprint {@link CanonicalRules#sha256 SHA-256} of all rows in canonical form, 64
 *     hexadecimal digits; not null
 * @since 0.1
 */
public record Identity(
    Map<Subject, OriginId> editions,
    List<OriginId> overlays,
    Map<String, Integer> revisions,
    int form,
    String fingerprint) {
  /**
   * Copies the maps.
   *
   * @throws InvalidValueException if the form is below 1 or the fingerprint is anything else
   */
  public Identity {
    editions = Maps.immutableEnumMap(editions);
    overlays = ImmutableList.copyOf(overlays);
    revisions = ImmutableSortedMap.copyOf(revisions);
    InvalidValueException.require(form >= 1, "Identity.form", form, "1 or more");
    InvalidValueException.require(
        fingerprint.matches("[0-9a-f]{64}"),
        "Identity.fingerprint",
        fingerprint,
        "64 hexadecimal digits");
  }
}
