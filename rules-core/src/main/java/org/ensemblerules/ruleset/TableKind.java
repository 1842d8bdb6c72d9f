package org.ensemblerules.ruleset;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BiPredicate;
import java.util.function.Function;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.TableFault;

/**
 * A kind of table, declared once, for instance in {@link InspectionKinds}: its name, its subject,
 * who has it, its rows, how they are compiled, and when a verdict reads one. The rule set, its
 * fingerprint, the trace of a verdict, the audit and the loader all follow from the declaration.
 * Two kinds are the same only if they are the same object.
 *
 * @param <R> its rows
 * @param <T> the table they are compiled to, which some kinds share
 * @since 0.1
 */
public final class TableKind<R extends ComparableRow<R>, T> {
  /** A kind of which nothing but the name is said yet. */
  record Named(String name, Subject subject, HeldBy heldBy) {
    <R extends ComparableRow<R>, T> Holding<R, T> rows(Class<R> type, Function<T, List<R>> rows) {
      return new Holding<>(this, type, rows);
    }

    /** Each row stands for itself, so that no two of them can be at odds. */
    <R extends ComparableRow<R>> Compiled<R, List<R>> listOf(Class<R> type) {
      return this.<R, List<R>>rows(type, rows -> rows)
          .by(rows -> Checked.of(List.of(), () -> ImmutableList.copyOf(rows)));
    }
  }

  /** A kind of which it is not said yet how its rows are compiled. */
  record Holding<R extends ComparableRow<R>, T>(
      Named named, Class<R> type, Function<T, List<R>> rows) {
    Compiled<R, T> by(Function<List<R>, Checked<T, TableFault>> compiler) {
      return new Compiled<>(
          this, Optional.empty(), Optional.empty(), (all, tables) -> compiler.apply(all), false);
    }

    <B> Compiled<R, T> by(
        TableKind<?, B> base, BiFunction<List<R>, B, Checked<T, TableFault>> compiler) {
      return new Compiled<>(
          this,
          Optional.empty(),
          Optional.of(base),
          (all, tables) -> compiler.apply(all, tables.of(base)),
          false);
    }

    /** Its rows stand in the table of another kind and are compiled into it. */
    Compiled<R, T> into(
        TableKind<?, T> home, BiFunction<List<R>, TableMap, Checked<T, TableFault>> compiler) {
      return new Compiled<>(this, Optional.of(home), Optional.of(home), compiler, false);
    }
  }

  /** A kind of which it is not said yet when a verdict reads a row. */
  record Compiled<R extends ComparableRow<R>, T>(
      Holding<R, T> holding,
      Optional<TableKind<?, T>> home,
      Optional<TableKind<?, ?>> base,
      BiFunction<List<R>, TableMap, Checked<T, TableFault>> compiler,
      boolean isNeeded) {
    /** No set of rules can be composed without it. */
    Compiled<R, T> needed() {
      return new Compiled<>(holding, home, base, compiler, true);
    }

    TableKind<R, T> readWhen(BiPredicate<R, TracedCase> reads) {
      return new TableKind<>(this, reads);
    }

    /** Each verdict reads each of its rows. */
    TableKind<R, T> alwaysRead() {
      return readWhen((row, file) -> true);
    }

    /** It answers a question that no verdict asks. */
    TableKind<R, T> notForVerdicts() {
      return readWhen((row, file) -> false);
    }
  }

  private final Compiled<R, T> declared;
  private final BiPredicate<R, TracedCase> reads;

  private TableKind(Compiled<R, T> declared, BiPredicate<R, TracedCase> reads) {
    this.declared = declared;
    this.reads = reads;
  }

  static Named named(String name, Subject subject, HeldBy heldBy) {
    return new Named(name, subject, heldBy);
  }

  /**
   * Returns its name.
   *
   * @return the name, as in table files and in the canonical text of rules; never null
   */
  public String name() {
    return declared.holding().named().name();
  }

  /**
   * Returns its subject.
   *
   * @return the subject whose edition decides which table of this kind holds; never null
   */
  public Subject subject() {
    return declared.holding().named().subject();
  }

  /**
   * Returns who has it.
   *
   * @return which bodies of rules have such a table; never null
   */
  public HeldBy heldBy() {
    return declared.holding().named().heldBy();
  }

  /**
   * Returns the type of its rows, which no other kind has.
   *
   * @return the type; never null
   */
  public Class<R> rowType() {
    return declared.holding().type();
  }

  /**
   * Tells whether no set of rules can be composed without it.
   *
   * @return true if so
   */
  public boolean isNeeded() {
    return declared.isNeeded();
  }

  /**
   * Returns the kind whose compiled table its rows stand in.
   *
   * @return itself, or the kind that it shares a table with; never null
   */
  public TableKind<?, T> home() {
    return declared.home().isPresent() ? declared.home().get() : this;
  }

  /**
   * Returns the kind that it is compiled by.
   *
   * @return the other kind; empty if it needs none
   */
  public Optional<TableKind<?, ?>> base() {
    return declared.base();
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @param tables the tables compiled so far, with that of its base if it has one; not null
   * @return the table, or all of its faults; never null
   */
  public Checked<T, TableFault> compile(List<R> rows, TableMap tables) {
    return declared.compiler().apply(rows, tables);
  }

  /**
   * Returns its rows in a compiled table.
   *
   * @param table the table; not null
   * @return the rows in table order; never null
   */
  public List<R> rows(T table) {
    return declared.holding().rows().apply(Objects.requireNonNull(table, "table"));
  }

  /**
   * Lists the rows of a compiled table that a verdict was reached with.
   *
   * @param table the table; not null
   * @param file what the verdict and its case name; not null
   * @return the rows in table order; never null
   */
  public List<R> read(T table, TracedCase file) {
    return rows(table).stream().filter(row -> reads.test(row, file)).toList();
  }

  @Override
  public String toString() {
    return name();
  }
}
