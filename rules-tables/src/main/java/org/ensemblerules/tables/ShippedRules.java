package org.ensemblerules.tables;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.ensemblerules.GearRules;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.source.Source;
import org.ensemblerules.source.SourceId;
import org.ensemblerules.tables.load.TableSetReader;
import org.ensemblerules.tables.set.LoadedTables;
import org.jspecify.annotations.Nullable;

/**
 * The rule sets that come with this library, one for each edition that has all tables. Each is
 * loaded once, when it is first asked for, and shared; it never changes.
 *
 * @since 0.1
 */
public final class ShippedRules {
  /** The edition chosen unless another is asked for. */
  public static final OriginId DEFAULT_EDITION = new OriginId("NFPA_1851_2020");

  private ShippedRules() {}

  private static final Lazy STANDARD = new Lazy(DEFAULT_EDITION);

  /** The editions, and the rules of each, which are composed when they are first asked for. */
  private static final class Holder {
    static final List<Edition> EDITIONS =
        TableLoader.editions(ShippedTables.files(), Subject.INSPECTION).orElseThrow();
    static final Map<OriginId, Lazy> SETS =
        EDITIONS.stream()
            .map(Edition::id)
            .collect(
                Collectors.toUnmodifiableMap(
                    Function.identity(),
                    id -> id.equals(DEFAULT_EDITION) ? STANDARD : new Lazy(id)));
  }

  private static final class SourcesHolder {
    static final Map<SourceId, Source> SOURCES =
        TableSetReader.sources(ShippedTables.files()).orElseThrow();
  }

  /** The rules of an edition, composed once. */
  private static final class Lazy {
    private final OriginId edition;
    private @Nullable GearRules rules;

    Lazy(OriginId edition) {
      this.edition = edition;
    }

    synchronized GearRules get() {
      if (rules == null) {
        LoadedTables tables = ShippedTables.load(Set.of(edition)).orElseThrow();
        rules = RuleSets.compose(tables, edition).orElseThrow();
      }
      return rules;
    }
  }

  /**
   * Returns the rules of the default edition.
   *
   * @return the rule set of {@link #DEFAULT_EDITION}; never null
   */
  public static GearRules standard() {
    return STANDARD.get();
  }

  /**
   * Returns the rules of an edition.
   *
   * @param edition its name, as in {@code NFPA_1851_2014}; not null
   * @return the rule set; empty if there is none for it
   */
  public static Optional<GearRules> of(OriginId edition) {
    return Optional.ofNullable(Holder.SETS.get(edition)).map(Lazy::get);
  }

  /**
   * Returns the documents that the shipped rows cite and the pages on which they were seen
   * restated, so that a verdict's reasons can be followed to them.
   *
   * @return the sources by id; never null
   */
  public static Map<SourceId, Source> sources() {
    return SourcesHolder.SOURCES;
  }

  /**
   * Lists the editions that there are rules for.
   *
   * @return the editions in the order of publication; never null
   */
  public static List<Edition> editions() {
    return Holder.EDITIONS;
  }
}
