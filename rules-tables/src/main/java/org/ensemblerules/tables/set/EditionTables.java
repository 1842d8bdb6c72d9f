package org.ensemblerules.tables.set;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.ruleset.TableKind;
import org.ensemblerules.ruleset.TableMap;
import org.ensemblerules.source.OriginId;

/**
 * The compiled tables of one edition, found by their kinds. A table that the edition does not have
 * is empty, which is not the same as a table without rows.
 *
 * <pre>{@code
 * Optional<CareLimitTable> limits = edition.find(CareKinds.CARE_LIMITS);
 * }</pre>
 *
 * @since 0.1
 */
public final class EditionTables {
  private final OriginId edition;
  private final TableMap tables;
  private final Set<Subject> subjects;

  private EditionTables(OriginId edition, TableMap tables) {
    this.edition = Objects.requireNonNull(edition, "edition");
    this.tables = Objects.requireNonNull(tables, "tables");
    Set<Subject> present = EnumSet.noneOf(Subject.class);
    tables.kinds().forEach(kind -> present.add(kind.subject()));
    this.subjects = Collections.unmodifiableSet(present);
  }

  /**
   * Returns the tables of an edition.
   *
   * @param edition the edition; not null
   * @param tables its tables; not null
   * @return the edition with them; never null
   */
  public static EditionTables of(OriginId edition, TableMap tables) {
    return new EditionTables(edition, tables);
  }

  /**
   * Returns the edition.
   *
   * @return its name; never null
   */
  public OriginId edition() {
    return edition;
  }

  /**
   * Returns the subjects that the edition has a table of.
   *
   * @return an unmodifiable set; never null
   */
  public Set<Subject> subjects() {
    return subjects;
  }

  /**
   * Finds the table of a kind.
   *
   * @param kind the kind, as {@link org.ensemblerules.ruleset.TableKinds#all} lists them; not null
   * @param <T> its type
   * @return the table; empty if the edition has none
   */
  public <T> Optional<T> find(TableKind<?, T> kind) {
    return tables.find(kind);
  }
}
