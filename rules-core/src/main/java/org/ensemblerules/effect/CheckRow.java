package org.ensemblerules.effect;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says of a check who does it, what must be shown, and what passing it settles.
 *
 * @param provenance where the row comes from; not null
 * @param check the check; not null
 * @param task the task that its doer must be permitted to do; not null
 * @param passCloses whether passing it settles the finding it was asked for; if not, only the check
 *     itself is passed and the finding stays open
 * @param handsOnTo the evaluation that has the last word once the check is passed, where passing
 *     settles nothing: that of an inspector or of an expert; empty where passing settles, and where
 *     the expert has it; not null
 * @param byLook whether an inspection that counts shows it as well, where its criterion by this
 *     check is clear
 * @param shown what must be shown, in words; not null
 * @since 0.1
 */
public record CheckRow(
    Provenance provenance,
    Check check,
    Task task,
    boolean passCloses,
    Optional<Check> handsOnTo,
    boolean byLook,
    String shown)
    implements ComparableRow<CheckRow> {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if the text is blank or longer than 400 characters, or what has
   *     the last word is no evaluation or is named for a check that settles by itself
   */
  public CheckRow {
    Objects.requireNonNull(provenance, "provenance");
    Objects.requireNonNull(check, "check");
    Objects.requireNonNull(task, "task");
    handsOnTo.ifPresent(
        last ->
            InvalidValueException.require(
                !passCloses
                    && (last == Check.INSPECTOR_EVALUATION || last == Check.EXPERT_EVALUATION),
                "CheckRow.handsOnTo",
                last,
                "INSPECTOR_EVALUATION or EXPERT_EVALUATION, where passing settles nothing"));
    InvalidValueException.requireText("CheckRow.shown", shown, 400);
  }

  /**
   * Makes a row that names nobody for the last word.
   *
   * @param provenance where the row comes from; not null
   * @param check the check; not null
   * @param task the task that its doer must be permitted to do; not null
   * @param passCloses whether passing it settles the finding it was asked for
   * @param shown what must be shown, in words; not null
   */
  public CheckRow(Provenance provenance, Check check, Task task, boolean passCloses, String shown) {
    this(provenance, check, task, passCloses, Optional.empty(), false, shown);
  }

  /**
   * Returns what settles a finding once this check is passed for it.
   *
   * @return the check itself if passing it settles; else the evaluation with the last word, which
   *     is the expert's where the row names none; never null
   */
  public Check lastWord() {
    return passCloses ? check : handsOnTo.orElse(Check.EXPERT_EVALUATION);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        check.name(),
        task.name(),
        Boolean.toString(passCloses),
        handsOnTo.map(Enum::name).orElse(""),
        Boolean.toString(byLook),
        shown);
  }

  @Override
  public List<String> topic() {
    return List.of(check.name());
  }

  @Override
  public List<String> words() {
    return List.of(shown);
  }

  @Override
  public ComparedFields compareFields(CheckRow other) {
    return ComparedFields.on(check == other.check && task == other.task)
        .with("passCloses", Comparison.lessIsStricter(passCloses, other.passCloses))
        .with("handsOnTo", lastWordAgainst(other))
        .with("byLook", Comparison.lessIsStricter(byLook, other.byLook));
  }

  /** Of two that settle nothing, the one that leaves the last word to an expert is stricter. */
  private Comparison lastWordAgainst(CheckRow other) {
    return passCloses || other.passCloses
        ? Comparison.SAME
        : Comparison.moreIsStricter(lastWord(), other.lastWord());
  }
}
