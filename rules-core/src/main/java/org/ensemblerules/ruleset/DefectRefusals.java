package org.ensemblerules.ruleset;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ensemblerules.defect.Admitted;
import org.ensemblerules.defect.Approval;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.effect.Effect;

/** Refuses rows on defects that ask for less than a row below them, or tell extents otherwise. */
final class DefectRefusals {
  private final Overlay overlay;
  private final Tables base;
  private final List<Overlay> below;
  private final Consumer<OverlayFault> faults;

  DefectRefusals(Overlay overlay, Tables base, List<Overlay> below, Consumer<OverlayFault> faults) {
    this.overlay = overlay;
    this.base = base;
    this.below = below;
    this.faults = faults;
  }

  void refuse() {
    for (DefectRow row : overlay.rows().defects()) {
      List<DefectRow> own =
          base.defects().bands(row.element(), row.use(), row.site(), row.defect());
      List<DefectRow> all =
          Stream.concat(
                  own.stream(),
                  below.stream()
                      .flatMap(each -> each.rows().defects().stream())
                      .filter(row::isOnTheSame))
              .toList();
      // One finding tells its extent in one way: two asked for could never both be known.
      all.stream()
          .filter(under -> !comparable(under.band().kind(), row.band().kind()))
          .findFirst()
          .ifPresent(under -> otherExtent(row, under));
      if (row.approval().isPresent()) {
        answer(row, own);
      }
      all.stream()
          .filter(row::asksForLessThan)
          .filter(under -> !under.isAnsweredBy(row))
          .forEach(under -> looser(row, under));
      if (own.isEmpty() && row.effect() instanceof Effect.Note) {
        fault(
            row,
            "effect",
            "NOTE where no row says what " + row.defect() + " at " + row.site() + " calls for",
            "any effect but NOTE: what no row covers is evaluated",
            Optional.empty());
      }
    }
  }

  /** An answer is given to a row of the edition that is open, and is one of those it admits. */
  private void answer(DefectRow row, List<DefectRow> own) {
    Approval given = row.approval().orElseThrow();
    Optional<DefectRow> opened =
        own.stream().filter(under -> under.key().equals(given.decides())).findFirst();
    if (opened.isEmpty() || !opened.get().open()) {
      fault(
          row,
          "decides",
          given.decides().value(),
          "a row of the edition for the same that is open",
          Optional.empty());
    } else if (!opened.get().isAnsweredBy(row)) {
      fault(
          row,
          "effect",
          new Admitted(row.effect(), row.afterward()).text() + " for " + row.band(),
          "for "
              + opened.get().band()
              + " one of "
              + opened.get().admits().stream().map(Admitted::text).toList(),
          Optional.of(opened.get()));
    }
  }

  private static boolean comparable(ExtentKind under, ExtentKind kind) {
    return under == kind || under == ExtentKind.PRESENCE || kind == ExtentKind.PRESENCE;
  }

  private void otherExtent(DefectRow row, DefectRow under) {
    fault(
        row,
        "extent",
        "extent told by " + row.band().kind(),
        "any presence, or extent told by "
            + under.band().kind()
            + " as "
            + named(under)
            + " has it",
        Optional.empty());
  }

  private void looser(DefectRow row, DefectRow under) {
    fault(
        row,
        "effect",
        row.effect().text()
            + " for "
            + row.band()
            + ", looser than "
            + under.effect().text()
            + " for "
            + under.band()
            + " by "
            + named(under),
        "an effect that asks for no less",
        Optional.of(under));
  }

  private static String named(DefectRow under) {
    return "row " + under.key() + " of " + under.provenance().origin();
  }

  private void fault(
      DefectRow row, String field, String found, String allowed, Optional<DefectRow> loosens) {
    faults.accept(
        new OverlayFault(
            overlay.id(), Optional.of(row.key()), field, found, allowed, loosens.map(r -> r)));
  }
}
