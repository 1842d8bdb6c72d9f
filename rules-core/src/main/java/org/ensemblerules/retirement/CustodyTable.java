package org.ensemblerules.retirement;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Maps;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * The steps of custody after a special incident.
 *
 * @since 0.1
 */
public final class CustodyTable {
  private final ImmutableList<CustodyStepRow> rows;
  private final Map<CustodyStep, CustodyStepRow> bySteps;

  private CustodyTable(List<CustodyStepRow> rows, Map<CustodyStep, CustodyStepRow> bySteps) {
    this.rows = ImmutableList.copyOf(rows);
    this.bySteps = Maps.immutableEnumMap(bySteps);
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each step named twice
   */
  public static Checked<CustodyTable, TableFault> of(List<CustodyStepRow> rows) {
    Cells<CustodyStep, CustodyStepRow> bySteps =
        Cells.of(rows, CustodyStepRow::step, "step", row -> row.step().name(), "each step once");
    return Checked.of(bySteps.faults(), () -> new CustodyTable(rows, bySteps.rows()));
  }

  /**
   * Holds a record against the steps that rows ask for. What is recorded of a later day does not
   * count yet, and what has no date does not count for what needs one.
   *
   * @param custody what was recorded; not null
   * @param asOf the day asked about; not null
   * @return an answer for each step that a row asks for; a step without a row has none, so that an
   *     empty answer means that no rule covers it
   */
  public Map<CustodyStep, CustodyAnswer> check(CustodyRecord custody, LocalDate asOf) {
    EnumMap<CustodyStep, CustodyAnswer> answers = new EnumMap<>(CustodyStep.class);
    bySteps.forEach(
        (step, row) -> {
          List<String> missing = missing(step, custody, asOf);
          if (step == CustodyStep.RECORDED_RELEASE && custody.released().isEmpty()) {
            answers.put(step, new CustodyAnswer.StillHeld(row));
          } else if (missing.isEmpty()) {
            answers.put(step, new CustodyAnswer.Shown(row));
          } else {
            answers.put(step, new CustodyAnswer.Missing(row, missing));
          }
        });
    return Maps.immutableEnumMap(answers);
  }

  private static List<String> missing(CustodyStep step, CustodyRecord custody, LocalDate asOf) {
    return switch (step) {
      case TAKEN_OUT ->
          custody.taken().date().certainlyBy(asOf)
              ? List.of()
              : List.of("when it was taken out of service");
      case PRESERVED_AS_FOUND -> unlessYes(custody.leftAsFound(), "left as it was found");
      case NOT_CLEANED -> unlessYes(custody.leftUncleaned(), "left uncleaned");
      case PROTECTED_STORAGE -> unlessYes(custody.storedProtected(), "stored protected");
      case LIMITED_ACCESS -> unlessYes(custody.accessLimited(), "kept from all but a few");
      case NAMED_CUSTODIAN ->
          custody.custodian().isPresent() ? List.of() : List.of("the name of its custodian");
      case CHAIN_OF_CUSTODY -> CustodyChain.gaps(custody, asOf);
      case PHOTOGRAPHS -> done(custody.photographed(), "photographs, and the day", asOf);
      case EXPERT_EXAMINATION -> done(custody.examined(), "a look by an expert, and the day", asOf);
      case RECORDED_RELEASE -> released(custody.released(), asOf);
    };
  }

  private static List<String> unlessYes(YesNoUnknown known, String what) {
    return switch (known) {
      case YES -> List.of();
      case NO -> List.of("it was not " + what);
      case UNKNOWN -> List.of("whether it was " + what);
    };
  }

  private static List<String> done(List<CustodyRecord.Deed> deeds, String what, LocalDate asOf) {
    return deeds.stream().anyMatch(deed -> deed.on().certainlyBy(asOf)) ? List.of() : List.of(what);
  }

  private static List<String> released(Optional<CustodyRecord.Deed> release, LocalDate asOf) {
    return release.filter(deed -> deed.on().certainlyBy(asOf)).isPresent()
        ? List.of()
        : List.of("a release that certainly came by " + asOf);
  }

  /**
   * Returns all rows.
   *
   * @return the rows in table order; never null
   */
  public List<CustodyStepRow> rows() {
    return rows;
  }
}
