package org.ensemblerules.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.EditionId;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;

/**
 * The rule sets that come with this library, one for each edition that has all tables. They are
 * loaded once, when first asked for, and shared; they never change.
 */
public final class ShippedRules {
  /** The edition chosen unless another is asked for. */
  public static final EditionId DEFAULT_EDITION = new EditionId("NFPA_1851_2020");

  private ShippedRules() {}

  private static final class Holder {
    static final LoadedTables TABLES = ShippedTables.load().orElseThrow();
    static final Map<EditionId, RuleSet> SETS =
        TABLES.editions(Subject.INSPECTION).stream()
            .map(Edition::id)
            .collect(
                Collectors.toUnmodifiableMap(
                    Function.identity(), id -> RuleSets.compose(TABLES, id).orElseThrow()));
  }

  /**
   * Returns the rules of the default edition.
   *
   * @return the rule set of {@link #DEFAULT_EDITION}; never null
   */
  public static RuleSet standard() {
    return of(DEFAULT_EDITION).orElseThrow();
  }

  /**
   * Returns the rules of an edition.
   *
   * @param edition its name, as in {@code NFPA_1851_2014}; not null
   * @return the rule set; empty if there is none for it
   */
  public static Optional<RuleSet> of(EditionId edition) {
    return Optional.ofNullable(Holder.SETS.get(edition));
  }

  /** Returns the sources that the shipped rows cite. */
  static Map<SourceId, Source> sources() {
    return Holder.TABLES.sources();
  }

  /**
   * Lists the editions that there are rules for.
   *
   * @return the editions in the order of publication; never null
   */
  public static List<Edition> editions() {
    return Holder.TABLES.editions(Subject.INSPECTION);
  }
}
