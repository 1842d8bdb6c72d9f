package org.ensemblerules.strength;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * What test methods need, and which specimens they let be discarded.
 *
 * @since 0.1
 */
public final class MethodTable {
  private final ImmutableMap<TestMethod, MethodRow> methods;
  private final ImmutableListMultimap<TestMethod, DiscardRow> discards;

  private MethodTable(Map<TestMethod, MethodRow> methods, List<DiscardRow> discards) {
    this.methods = ImmutableMap.copyOf(methods);
    this.discards =
        discards.stream()
            .collect(ImmutableListMultimap.toImmutableListMultimap(DiscardRow::method, row -> row));
  }

  /**
   * Compiles rows.
   *
   * @param methods the methods; not null
   * @param discards their rules for discarding; not null
   * @return the table, or every fault: a method twice, a rule twice, a rule of an unknown method
   */
  public static Checked<MethodTable, TableFault> of(
      List<MethodRow> methods, List<DiscardRow> discards) {
    Cells<TestMethod, MethodRow> byName =
        Cells.of(
            methods, MethodRow::method, "method", row -> row.method().value(), "each method once");
    List<TableFault> faults = byName.faults();
    for (DiscardRow row : discards) {
      if (!byName.rows().containsKey(row.method())) {
        faults.add(
            new TableFault(
                row.key(), "method", row.method().value(), "a method that the table has"));
      }
    }
    faults.addAll(
        Cells.of(
                discards,
                DiscardRow::canonical,
                "rule",
                row -> row.rule().text(),
                "each rule of a method once")
            .faults());
    return Checked.of(faults, () -> new MethodTable(byName.rows(), discards));
  }

  /**
   * Finds a method.
   *
   * @param method the method; not null
   * @return its row; empty if the table has none
   */
  public Optional<MethodRow> method(TestMethod method) {
    return Optional.ofNullable(methods.get(method));
  }

  /**
   * Lists the rules of a method for discarding specimens.
   *
   * @param method the method; not null
   * @return the rows in table order; empty if nothing may be discarded
   */
  public List<DiscardRow> discards(TestMethod method) {
    return discards.get(method);
  }

  /**
   * Returns the rows of all methods.
   *
   * @return the rows in table order; never null
   */
  public List<MethodRow> rows() {
    return methods.values().asList();
  }

  /**
   * Returns all rules for discarding.
   *
   * @return the rows, method by method; never null
   */
  public List<DiscardRow> discardRows() {
    return ImmutableList.copyOf(discards.values());
  }
}
