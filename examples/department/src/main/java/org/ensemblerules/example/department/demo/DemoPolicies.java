package org.ensemblerules.example.department.demo;

import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LabelBuilder;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.Order;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SetTable;
import org.ensemblerules.issue.SizeFit;
import org.ensemblerules.issue.SizeTable;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.tables.message.CostEntry;
import org.ensemblerules.tables.message.DeliveredOrder;
import org.ensemblerules.tables.message.SetEntry;

/** What the invented department decided for itself, and what came in its mail. */
public final class DemoPolicies {
  private static final Basis PRACTICE = new Basis.CommonPractice();

  /** The overlap that the trade asks for is remembered; no page was found. */
  private static final Basis REMEMBERED = new Basis.Memory(Confidence.MEDIUM, Optional.empty());

  private static final Quantity OVERLAP = Quantity.of("2", Unit.INCH);

  private DemoPolicies() {}

  /**
   * Tells what a set must have, and where its elements must be shown to meet.
   *
   * @return the table; never null
   */
  public static SetTable sets() {
    return SetTable.of(rows(), joins());
  }

  private static List<SetRow> rows() {
    List<SetRow> rows = new ArrayList<>();
    for (Use use : Use.values()) {
      rows.add(
          new SetRow(
              use,
              List.of(
                  EnumSet.of(ElementKind.COAT, ElementKind.TROUSERS),
                  EnumSet.of(ElementKind.COVERALL)),
              PRACTICE));
      List<ElementKind> more =
          new ArrayList<>(
              List.of(
                  ElementKind.HOOD,
                  ElementKind.GLOVES,
                  ElementKind.FOOTWEAR,
                  ElementKind.HELMET,
                  ElementKind.DRAG_RESCUE_DEVICE));
      if (use == Use.PROXIMITY) {
        more.addAll(List.of(ElementKind.SHROUD, ElementKind.HELMET_COVER));
      }
      more.forEach(kind -> rows.add(new SetRow(use, List.of(Set.of(kind)), PRACTICE)));
    }
    return rows;
  }

  private static List<Join> joins() {
    List<Join> joins = new ArrayList<>();
    for (Use use : Use.values()) {
      for (Join.Place place : Join.Place.values()) {
        boolean measured = place == Join.Place.COAT_OVER_TROUSERS;
        joins.add(
            new Join(
                place,
                use,
                measured ? Optional.of(OVERLAP) : Optional.empty(),
                measured ? REMEMBERED : PRACTICE));
      }
    }
    return joins;
  }

  /**
   * Tells which sizes may stand in for which: one larger for what is worn loose.
   *
   * @return the table; never null
   */
  public static SizeTable sizes() {
    return SizeTable.of(fits());
  }

  private static List<SizeFit> fits() {
    List<String> sizes = List.of("S", "M", "L", "XL", "2XL");
    List<SizeFit> rows = new ArrayList<>();
    for (ElementKind kind : List.of(ElementKind.COAT, ElementKind.TROUSERS, ElementKind.HOOD)) {
      for (int i = 0; i + 1 < sizes.size(); i++) {
        rows.add(new SizeFit(kind, sizes.get(i), Set.of(sizes.get(i + 1)), PRACTICE));
      }
    }
    return rows;
  }

  /**
   * Tells all that was decided about sets, entry by entry.
   *
   * @return the entries; never null
   */
  public static List<SetEntry> setEntries() {
    List<SetEntry> entries = new ArrayList<>();
    rows().forEach(row -> entries.add(new SetEntry.Needs(row)));
    joins().forEach(join -> entries.add(new SetEntry.Meets(join)));
    fits().forEach(fit -> entries.add(new SetEntry.Fits(fit)));
    return entries;
  }

  /**
   * Tells what gear and its care cost, all of it invented. No shroud was ever bought by itself, and
   * specialized cleaning is billed case by case. Care is thought worth three times a new one, in
   * all the years.
   *
   * @return the costs; never null
   */
  public static List<CostEntry> costs() {
    List<CostEntry> costs = new ArrayList<>();
    for (Use use : Use.values()) {
      long times = use == Use.PROXIMITY ? 2 : 1;
      new EnumMap<>(
              Map.of(
                  ElementKind.COAT, 1500L,
                  ElementKind.TROUSERS, 1100L,
                  ElementKind.COVERALL, 2400L,
                  ElementKind.HOOD, 120L,
                  ElementKind.GLOVES, 110L,
                  ElementKind.FOOTWEAR, 450L,
                  ElementKind.HELMET, 400L,
                  ElementKind.DRAG_RESCUE_DEVICE, 60L,
                  ElementKind.HELMET_COVER, 180L))
          .forEach(
              (kind, amount) ->
                  costs.add(
                      new CostEntry.NewGear(
                          new UnitCost(
                              kind, use, Optional.empty(), BigDecimal.valueOf(amount * times)))));
    }
    costs.add(new CostEntry.Cleaning(CleaningKind.EXPOSURE_REDUCTION, BigDecimal.ZERO));
    costs.add(new CostEntry.Cleaning(CleaningKind.ADVANCED, BigDecimal.valueOf(25)));
    costs.add(new CostEntry.Cleaning(CleaningKind.SANITIZING, BigDecimal.valueOf(40)));
    costs.add(new CostEntry.Repair(RepairClass.BASIC, BigDecimal.valueOf(35)));
    costs.add(new CostEntry.Repair(RepairClass.ADVANCED, BigDecimal.valueOf(180)));
    costs.add(
        new CostEntry.Worth(
            new CostPolicy(CostPolicy.Against.REPLACEMENT_VALUE, BigDecimal.valueOf(300))));
    return costs;
  }

  /**
   * Returns a notice that came in, of one model, made in one year.
   *
   * @return the notice; never null
   */
  public static SafetyNotice notice() {
    return new SafetyNotice(
        "Maker Two 2026-4",
        SafetyNotice.Asks.STOP_USE,
        Set.of(ElementKind.GLOVES, ElementKind.HOOD),
        "Maker Two",
        Set.of("Pattern GS", "Pattern HS"),
        Set.of(),
        MarkedDate.parse("2021"),
        MarkedDate.parse("2023-06"));
  }

  /**
   * Returns an order of gloves and what came for it: six pairs, of which some are not as ordered.
   *
   * @return both; never null
   */
  public static DeliveredOrder delivery() {
    return new DeliveredOrder(order(), delivered());
  }

  private static Order order() {
    return new Order(
        "2026-31",
        ElementKind.GLOVES,
        Use.STRUCTURAL,
        Optional.of(new GearModel("Maker One", "Pattern GS")),
        Map.of("M", 3, "L", 3),
        Optional.of("NFPA 1971, 2018"),
        96);
  }

  private static List<Element> delivered() {
    return List.of(
        gloves("N-1", "M", label -> {}),
        gloves("N-2", "M", label -> {}),
        gloves("N-3", "XL", label -> {}),
        gloves("N-4", "L", label -> label.manufactured(MarkedDate.parse("2023"))),
        gloves("N-5", "L", label -> label.certificationMark(YesNoUnknown.UNKNOWN)),
        gloves("1-03-GLOVES", "L", label -> {}));
  }

  private static Element gloves(String id, String size, Consumer<LabelBuilder> change) {
    LabelBuilder label =
        Label.builder()
            .manufacturer("Maker One")
            .model("Pattern GS")
            .identification("LOT-" + id)
            .size(size)
            .manufactured(new MarkedDate.Month(YearMonth.of(2026, 9)))
            .claimedEdition("NFPA 1971, 2018")
            .certificationMark(YesNoUnknown.YES)
            .legibility(Legibility.READABLE);
    change.accept(label);
    return Element.builder(new ElementId(id), ElementKind.GLOVES, Use.STRUCTURAL)
        .label(label.build())
        .build();
  }
}
