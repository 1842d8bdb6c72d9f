package org.ensemblerules.ruleset;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ensemblerules.care.CareDemand;
import org.ensemblerules.care.CareLimitRow;
import org.ensemblerules.care.ModelCareLimitRow;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.effect.Effect;

/**
 * Refuses limits of a manufacturer's instructions by which gear would stay that a row retires. What
 * a wash beyond a limit makes of gear is a finding, and some layer may have it retired for that.
 */
final class InstructionRefusals {
  private final Overlay overlay;
  private final Tables base;
  private final List<Overlay> all;
  private final Consumer<OverlayFault> faults;

  InstructionRefusals(
      Overlay overlay, Tables base, List<Overlay> all, Consumer<OverlayFault> faults) {
    this.overlay = overlay;
    this.base = base;
    this.all = all;
    this.faults = faults;
  }

  void refuse() {
    for (ModelCareLimitRow row : overlay.rows().modelCareLimits()) {
      WashLimitRefusals.replaced(row, base).ifPresent(under -> check(row, under));
    }
  }

  private void check(ModelCareLimitRow row, CareLimitRow under) {
    if (row.limit().demand() instanceof CareDemand.Within loose) {
      loose
          .measure()
          .finding(loose.limit().bound())
          .flatMap(found -> retiring(row.limit(), found))
          .ifPresent(retires -> fault(row, under, retires));
    }
  }

  private Optional<DefectRow> retiring(CareLimitRow limit, DefectKind found) {
    return Stream.concat(
            base.defects().rows().stream(),
            all.stream().flatMap(each -> each.rows().defects().stream()))
        .filter(row -> row.element() == limit.element() && row.use() == limit.use())
        .filter(row -> row.defect() == found && row.effect() instanceof Effect.Retire)
        .findFirst();
  }

  private void fault(ModelCareLimitRow row, CareLimitRow under, DefectRow retires) {
    faults.accept(
        new OverlayFault(
            overlay.id(),
            Optional.of(row.key()),
            "demand",
            row.limit().demand().allowed()
                + ", looser than "
                + under.demand().allowed()
                + " by row "
                + under.key()
                + " of "
                + under.provenance().origin()
                + ", where "
                + retires.defect()
                + " calls for "
                + retires.effect().text()
                + " by row "
                + retires.key()
                + " of "
                + retires.provenance().origin(),
            "a limit that lets no more pass: a manufacturer's instructions touch nothing that"
                + " retires",
            Optional.of(under)));
  }
}
