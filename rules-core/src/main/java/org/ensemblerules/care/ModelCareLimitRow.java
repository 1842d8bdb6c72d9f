package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;
import org.ensemblerules.source.RowKey;

/**
 * Says within what a wash of one model must stay by its manufacturer's instructions.
 *
 * @param model the model; not null
 * @param limit what is asked of its elements, and where that comes from; not null
 * @param replaces the row in whose place it is put where it is the looser of the two; empty if it
 *     only stands beside the others
 * @param from from which day on a wash may be held to it in place of a stricter row; empty if ever
 * @since 0.1
 */
public record ModelCareLimitRow(
    GearModel model, CareLimitRow limit, Optional<RowKey> replaces, Optional<LocalDate> from)
    implements ComparableRow<ModelCareLimitRow> {
  /**
   * Checks that only a measured value is replaced.
   *
   * @throws InvalidValueException if a row that forbids something replaces another
   */
  public ModelCareLimitRow {
    Objects.requireNonNull(model, "model");
    Objects.requireNonNull(limit, "limit");
    Objects.requireNonNull(replaces, "replaces");
    Objects.requireNonNull(from, "from");
    InvalidValueException.require(
        replaces.isEmpty() || limit.demand() instanceof CareDemand.Within,
        "ModelCareLimitRow.replaces",
        replaces.map(RowKey::value).orElse(""),
        "nothing where a practice is forbidden: only a measured value replaces another");
  }

  @Override
  public Provenance provenance() {
    return limit.provenance();
  }

  @Override
  public List<String> canonical() {
    return ImmutableList.<String>builder()
        .add(model.manufacturer(), model.model())
        .addAll(limit.canonical())
        .add(replaces.map(RowKey::value).orElse(""))
        .add(from.map(LocalDate::toString).orElse(""))
        .build();
  }

  @Override
  public List<String> topic() {
    return ImmutableList.<String>builder()
        .add(model.manufacturer(), model.model())
        .addAll(limit.topic())
        .build();
  }

  @Override
  public List<String> narrowedTo() {
    return limit.narrowedTo();
  }

  /** One more may be stricter than all others, or stand in place of a stricter one. */
  @Override
  public ComparedFields compareFields(ModelCareLimitRow other) {
    ComparedFields limits = limit.compareFields(other.limit);
    return ComparedFields.on(
            model.equals(other.model)
                && limit.layer().equals(other.limit.layer())
                && replaces.equals(other.replaces)
                && from.equals(other.from))
        .with("demand", limits.strictness());
  }
}
