package org.ensemblerules.example.department;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.example.department.demo.DemoPolicies;
import org.ensemblerules.fleet.CareCosts;
import org.ensemblerules.fleet.Prices;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.tables.ListsJson;
import org.ensemblerules.tables.message.CostEntry;
import picocli.CommandLine.Option;

/** What gear and its care cost. */
final class CostsOption {
  @Option(
      names = "--costs",
      paramLabel = "FILE",
      description =
          "JSON Lines file of what new gear, cleanings and repairs cost. Default: the invented"
              + " department's for its own gear, none for other gear.")
  private Optional<String> file = Optional.empty();

  /**
   * What things cost.
   *
   * @param worth up to what share of new gear its care is worth its cost; empty if nobody said
   */
  record Costs(Prices prices, CareCosts care, Optional<CostPolicy> worth) {}

  /** Reads the costs. */
  Costs read(KeptLists lists, boolean demo, BigDecimal growthPercent) throws IOException {
    List<CostEntry> entries = demo ? DemoPolicies.costs() : List.of();
    if (file.isPresent()) {
      entries = lists.whole(file.get(), ListsJson.COSTS);
    }
    List<CostEntry> all = entries;
    return lists.made(() -> of(all, growthPercent));
  }

  private static Costs of(List<CostEntry> entries, BigDecimal growthPercent) {
    List<UnitCost> gear = new ArrayList<>();
    Map<CleaningKind, BigDecimal> cleanings = new EnumMap<>(CleaningKind.class);
    Map<RepairClass, BigDecimal> repairs = new EnumMap<>(RepairClass.class);
    List<CostPolicy> worth = new ArrayList<>();
    for (CostEntry entry : entries) {
      if (entry instanceof CostEntry.NewGear of) {
        gear.add(of.cost());
      } else if (entry instanceof CostEntry.Cleaning of) {
        once(cleanings.put(of.cleaning(), of.amount()) == null, of.cleaning());
      } else if (entry instanceof CostEntry.Repair of) {
        once(repairs.put(of.repair(), of.amount()) == null, of.repair());
      } else if (entry instanceof CostEntry.Worth of) {
        once(worth.isEmpty(), "WORTH");
        worth.add(of.policy());
      }
    }
    return new Costs(
        Prices.of(gear, growthPercent),
        new CareCosts(cleanings, repairs),
        worth.stream().findFirst());
  }

  private static void once(boolean first, Object what) {
    InvalidValueException.require(first, "--costs", what, "each once");
  }
}
