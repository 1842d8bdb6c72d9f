package org.ensemblerules.effect;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.FaultCode;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;
import org.jspecify.annotations.Nullable;

/**
 * Who may do what.
 *
 * @since 0.1
 */
public final class PermissionTable {
  private final ImmutableList<PermissionRow> rows;
  private final ImmutableList<ForbidRow> forbidden;
  private final @Nullable PermissionRow[][] cells;
  private final ImmutableList<ImmutableList<PermissionRow>> byTask;

  private PermissionTable(List<PermissionRow> rows, List<ForbidRow> forbidden) {
    this.rows = ImmutableList.copyOf(rows);
    this.forbidden = ImmutableList.copyOf(forbidden);
    this.cells = new PermissionRow[Task.values().length][EntityKind.values().length];
    for (PermissionRow row : rows) {
      cells[row.task().ordinal()][row.entity().ordinal()] = row;
    }
    ImmutableList.Builder<ImmutableList<PermissionRow>> lists = ImmutableList.builder();
    for (Task task : Task.values()) {
      lists.add(
          rows.stream()
              .filter(
                  row -> row.task() == task && forbids(task, row.entity(), LocalDate.MAX).isEmpty())
              .sorted(Comparator.comparing(PermissionRow::entity))
              .collect(ImmutableList.toImmutableList()));
    }
    this.byTask = lists.build();
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each task and entity named twice and each task nobody may do
   */
  public static Checked<PermissionTable, TableFault> of(List<PermissionRow> rows) {
    List<TableFault> faults =
        Cells.of(
                rows,
                row -> List.of(row.task(), row.entity()),
                "entity",
                row -> row.task() + " by " + row.entity(),
                "each entity once per task")
            .faults();
    Set<Task> missing = EnumSet.allOf(Task.class);
    rows.forEach(row -> missing.remove(row.task()));
    if (!rows.isEmpty() && !missing.isEmpty()) {
      faults.add(
          new TableFault(
              FaultCode.GAP,
              rows.get(0).key(),
              "task",
              "nobody may do " + missing,
              "a doer for every task"));
    }
    return Checked.of(faults, () -> new PermissionTable(rows, List.of()));
  }

  /**
   * Forbids entities to do tasks, as overlays do.
   *
   * @param more the rows that forbid; not null
   * @return the table with them, or a fault for each task that they leave to nobody
   */
  public Checked<PermissionTable, TableFault> with(List<ForbidRow> more) {
    List<ForbidRow> all = Stream.concat(forbidden.stream(), more.stream()).toList();
    PermissionTable table = new PermissionTable(rows, all);
    List<TableFault> faults = new ArrayList<>();
    for (ForbidRow row : more) {
      if (table.permitted(row.task()).isEmpty() && !permitted(row.task()).isEmpty()) {
        faults.add(
            new TableFault(
                FaultCode.GAP,
                row.key(),
                "entities",
                row.entity() + " forbidden to do " + row.task() + ", which then nobody may do",
                "at least one of "
                    + permitted(row.task()).stream().map(PermissionRow::entity).toList()
                    + " left to do it"));
      }
    }
    return Checked.of(faults, () -> table);
  }

  private Optional<ForbidRow> forbids(Task task, EntityKind entity, LocalDate date) {
    for (ForbidRow row : forbidden) {
      if (row.task() == task
          && row.entity() == entity
          && row.from().map(from -> !date.isBefore(from)).orElse(true)) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
  }

  /**
   * Tells whether a doer may do a task to an element on a day. A member who holds the credential
   * that is asked of the organization may do what it may do, unless a row speaks of members.
   *
   * @param doer who; not null
   * @param task what; not null
   * @param element to which element; not null
   * @param date on which day; not null
   * @return yes, or which credential is missing, expired or not yet valid, or why not at all
   */
  public Permission mayPerform(Doer doer, Task task, Element element, LocalDate date) {
    if (!doer.registered()) {
      return new Permission.NotRegistered(doer.name());
    }
    PermissionRow row = row(doer, task);
    if (row == null) {
      return new Permission.NotThisEntity(doer.kind(), task);
    }
    Optional<ForbidRow> forbids =
        forbids(task, doer.kind(), date).or(() -> forbids(task, row.entity(), date));
    if (forbids.isPresent()) {
      return new Permission.Forbidden(forbids.get());
    }
    if (doer.kind() == EntityKind.MANUFACTURER && !made(doer, element)) {
      return new Permission.NotThisManufacturer(doer.name(), manufacturers(element));
    }
    return row.needs()
        .map(scope -> credentialed(doer, scope, date, row))
        .orElseGet(() -> new Permission.Permitted(row, Optional.empty()));
  }

  /**
   * The row that speaks of a doer. A member who holds the credential that a row asks of the
   * organization is one of its trained people; where a row speaks of members, that row holds.
   */
  private @Nullable PermissionRow row(Doer doer, Task task) {
    PermissionRow row = cells[task.ordinal()][doer.kind().ordinal()];
    if (row != null || doer.kind() != EntityKind.MEMBER) {
      return row;
    }
    PermissionRow trained = cells[task.ordinal()][EntityKind.ORGANIZATION.ordinal()];
    return trained != null && trained.needs().filter(scope -> claims(doer, scope)).isPresent()
        ? trained
        : null;
  }

  private static boolean claims(Doer doer, CredentialScope scope) {
    return doer.credentials().stream().anyMatch(credential -> credential.scope() == scope);
  }

  /**
   * Tells whether a doer may have done a task to an element on an imprecise date: the credential
   * must hold on its earliest and on its latest day.
   *
   * @param doer who; not null
   * @param task what; not null
   * @param element to which element; not null
   * @param date when; not null
   * @return yes only if they may on both days, else the first reason why not
   */
  public Permission mayPerform(Doer doer, Task task, Element element, MarkedDate date) {
    Optional<LocalDate> first = date.earliest();
    Optional<LocalDate> last = date.latest();
    if (first.isEmpty() || last.isEmpty()) {
      return new Permission.DayUnknown();
    }
    if (first.equals(last)) {
      return mayPerform(doer, task, element, first.get());
    }
    if (mayPerform(doer, task, element, last.get()) instanceof Permission.Forbidden forbidden) {
      return forbidden;
    }
    LocalDate day = first.get();
    Optional<Vouched> word = Optional.empty();
    Permission permission = mayPerform(doer, task, element, day);
    while (permission instanceof Permission.Permitted permitted) {
      word = word.or(permitted::word);
      LocalDate through = holdsThrough(doer, permitted.row(), day).orElse(last.get());
      if (!through.isBefore(last.get())) {
        return new Permission.Permitted(permitted.row(), word);
      }
      day = through.plusDays(1);
      permission = mayPerform(doer, task, element, day);
    }
    return permission;
  }

  /** The last day of the credentials that hold on a day; empty if none is needed. */
  private static Optional<LocalDate> holdsThrough(Doer doer, PermissionRow row, LocalDate day) {
    return row.needs()
        .flatMap(
            scope ->
                doer.credentials().stream()
                    .filter(credential -> credential.scope() == scope && credential.holdsOn(day))
                    .map(Credential::through)
                    .max(Comparator.naturalOrder()));
  }

  private static Permission credentialed(
      Doer doer, CredentialScope scope, LocalDate date, PermissionRow row) {
    Optional<Vouched> word = Optional.empty();
    for (Credential credential : doer.credentials()) {
      if (credential.scope() == scope && credential.holdsOn(date)) {
        // What is on record stands before what is only vouched for.
        if (credential.vouched().isEmpty()) {
          return new Permission.Permitted(row, Optional.empty());
        }
        word = word.or(credential::vouched);
      }
    }
    return word.isPresent() ? new Permission.Permitted(row, word) : notHeld(doer, scope, date);
  }

  private static Permission notHeld(Doer doer, CredentialScope scope, LocalDate date) {
    List<Credential> held =
        doer.credentials().stream().filter(credential -> credential.scope() == scope).toList();
    if (held.isEmpty()) {
      return new Permission.MissingCredential(scope);
    }
    return held.stream()
        .map(Credential::through)
        .filter(through -> through.isBefore(date))
        .max(Comparator.naturalOrder())
        .<Permission>map(through -> new Permission.ExpiredCredential(scope, through))
        .orElseGet(
            () ->
                new Permission.CredentialNotYetValid(
                    scope,
                    held.stream()
                        .map(Credential::from)
                        .min(Comparator.naturalOrder())
                        .orElseThrow()));
  }

  /** A label that does not say who made it may be of another. */
  private static boolean made(Doer doer, Element element) {
    List<Optional<String>> names = names(element);
    return !names.isEmpty() && names.stream().allMatch(Optional.of(doer.name())::equals);
  }

  private static String manufacturers(Element element) {
    List<Optional<String>> names = names(element);
    return names.isEmpty()
        ? "UNKNOWN"
        : names.stream().map(name -> name.orElse("UNKNOWN")).collect(Collectors.joining(", "));
  }

  private static List<Optional<String>> names(Element element) {
    return Stream.concat(element.layerLabels().values().stream(), element.label().stream())
        .map(Label::manufacturer)
        .distinct()
        .toList();
  }

  /**
   * Lists who may do a task.
   *
   * @param task the task; not null
   * @return the rows in the order of entities; empty only for a table without rows
   */
  public List<PermissionRow> permitted(Task task) {
    return byTask.get(Objects.requireNonNull(task, "task").ordinal());
  }

  /**
   * Returns the rows that forbid.
   *
   * @return the rows in the order given; never null
   */
  public List<ForbidRow> forbidden() {
    return forbidden;
  }

  /**
   * Returns all rows that permit, those that others forbid included.
   *
   * @return the rows in table order; never null
   */
  public List<PermissionRow> rows() {
    return rows;
  }
}
