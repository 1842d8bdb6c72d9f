package org.ensemblerules.history;

import com.google.common.collect.Sets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.ComparableRow;
import org.ensemblerules.source.ComparedFields;
import org.ensemblerules.source.Comparison;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.source.Provenance;

/**
 * Says how an element is inspected before it serves again, once it came back from others' hands.
 * Who may inspect it so, the table of permissions says.
 *
 * @param provenance where the row comes from; not null
 * @param back the transfer with which it came back; not null
 * @param inspections the kinds of inspection of which one that counts will do, at least one; not
 *     null
 * @param wording what the row says, in words, 1 to 500 characters; not null
 * @since 0.1
 */
public record ReturnRow(
    Provenance provenance, Transfer back, Set<InspectionKind> inspections, String wording)
    implements ComparableRow<ReturnRow> {
  /**
   * Checks that something came back, and that it can be inspected.
   *
   * @throws InvalidValueException if nothing comes back from others' hands with the transfer, there
   *     is no kind of inspection, or the wording is blank or too long
   */
  public ReturnRow {
    Objects.requireNonNull(provenance, "provenance");
    InvalidValueException.require(
        back.comesBack(),
        "ReturnRow.back",
        back,
        "a transfer with which an element comes from others' hands");
    inspections = Sets.immutableEnumSet(inspections);
    InvalidValueException.require(
        !inspections.isEmpty(), "ReturnRow.inspections", inspections, "at least one kind");
    InvalidValueException.requireText("ReturnRow.wording", wording, 500);
  }

  /**
   * Returns the kind of inspection that asks for least.
   *
   * @return the first of the kinds in the order of their names' list; never null
   */
  public InspectionKind least() {
    return inspections.iterator().next();
  }

  /**
   * Tells whether an event is of the sort that the row asks for, if it counts.
   *
   * @param event the event; not null
   * @return true if it is
   */
  public boolean asksFor(Event event) {
    return event instanceof LookEvent.Inspected done
        && inspections.contains(done.inspection().kind());
  }

  @Override
  public CitedRow cited() {
    return new CitedRow(provenance, Optional.of(wording), false);
  }

  @Override
  public List<String> canonical() {
    return List.of(
        back.name(),
        inspections.stream().map(Enum::name).collect(Collectors.joining(" or ")),
        wording);
  }

  @Override
  public List<String> topic() {
    return List.of(back.name());
  }

  @Override
  public List<String> words() {
    return List.of(wording);
  }

  /** Whoever lets fewer kinds of inspection do is stricter. */
  @Override
  public ComparedFields compareFields(ReturnRow other) {
    return ComparedFields.on(back == other.back)
        .with("inspections", Comparison.moreAreStricter(other.inspections, inspections));
  }

  @Override
  public Comparison asOneMore() {
    return Comparison.STRICTER;
  }
}
