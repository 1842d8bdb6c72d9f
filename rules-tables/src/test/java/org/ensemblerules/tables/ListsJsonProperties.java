package org.ensemblerules.tables;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.fleet.UnitCost;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementId;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.GearModel;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.issue.Fitting;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.Member;
import org.ensemblerules.issue.Order;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.issue.SetRow;
import org.ensemblerules.issue.SizeFit;
import org.ensemblerules.issue.Whereabouts;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.measure.Unit;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.source.Basis;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.tables.message.CostEntry;
import org.ensemblerules.tables.message.DeliveredOrder;
import org.ensemblerules.tables.message.JsonFault;
import org.ensemblerules.tables.message.KeptGear;
import org.ensemblerules.tables.message.SetEntry;

/** An entry of a list that is written is valid by its schema and read back as it was. */
class ListsJsonProperties {
  private static <T> void written(String schema, ListsJson.Form<T> form, T entry) {
    String json = form.write(entry);
    assertThat(TableSchemas.objections(schema, json)).as(json).isEmpty();
    assertThat(form.read("list", json).orElseThrow()).isEqualTo(entry);
  }

  private static Arbitrary<String> names() {
    return Arbitraries.strings()
        .withCharRange('!', '~')
        .withCharRange('À', 'ß')
        .ofMinLength(1)
        .ofMaxLength(30);
  }

  private static <T> Arbitrary<Optional<T>> perhaps(Arbitrary<T> values) {
    return values.optional();
  }

  private static Arbitrary<MarkedDate> dates() {
    return Arbitraries.of("2019", "2020-02", "2021-11-30").map(MarkedDate::parse);
  }

  private static Arbitrary<Quantity> lengths() {
    return Arbitraries.integers()
        .between(1, 300)
        .map(tenths -> Quantity.of(BigDecimal.valueOf(tenths, 1).toPlainString(), Unit.INCH));
  }

  private static Arbitrary<BigDecimal> amounts(int least) {
    return Arbitraries.integers()
        .between(least, 1_000_000)
        .map(cents -> BigDecimal.valueOf(cents, 2));
  }

  private static Arbitrary<Basis> bases() {
    return Arbitraries.of(
        new Basis.CommonPractice(), new Basis.Memory(Confidence.LOW, Optional.empty()));
  }

  @Provide
  Arbitrary<Member> members() {
    return Combinators.combine(
            names(),
            perhaps(names()),
            Arbitraries.of(Use.class).set().ofMaxSize(2),
            Arbitraries.maps(Arbitraries.of(ElementKind.class), names()).ofMaxSize(4))
        .as(Member::new);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void members(@ForAll("members") Member entry) {
    written("member", ListsJson.MEMBERS, entry);
  }

  @Provide
  Arbitrary<KeptGear> kept() {
    return Combinators.combine(
            names(),
            perhaps(names()),
            perhaps(names()),
            perhaps(names()),
            perhaps(Arbitraries.integers().between(0, 900).map(LocalDate.of(2026, 1, 1)::plusDays)))
        .as(
            (id, holder, station, place, back) ->
                new KeptGear(new ElementId(id), new Whereabouts(holder, station, place, back)));
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void whereabouts(@ForAll("kept") KeptGear entry) {
    written("whereabouts", ListsJson.WHEREABOUTS, entry);
  }

  @Provide
  Arbitrary<SetEntry> setEntries() {
    Arbitrary<Use> uses = Arbitraries.of(Use.class);
    Arbitrary<SetEntry> needs =
        Combinators.combine(
                uses,
                Arbitraries.of(ElementKind.class).set().ofMinSize(1).ofMaxSize(3).list().ofSize(2),
                bases())
            .as((use, ways, basis) -> new SetEntry.Needs(new SetRow(use, distinct(ways), basis)));
    Arbitrary<SetEntry> meets =
        Combinators.combine(Arbitraries.of(Join.Place.class), uses, perhaps(lengths()), bases())
            .as(
                (place, use, least, basis) ->
                    new SetEntry.Meets(new Join(place, use, least, basis)));
    Arbitrary<SetEntry> fits =
        Combinators.combine(
                Arbitraries.of(ElementKind.class),
                names(),
                names().set().ofMinSize(1).ofMaxSize(3),
                bases())
            .as(
                (kind, size, sizes, basis) ->
                    new SetEntry.Fits(new SizeFit(kind, size, sizes, basis)));
    return Arbitraries.oneOf(needs, meets, fits);
  }

  private static List<Set<ElementKind>> distinct(List<Set<ElementKind>> ways) {
    return ways.stream().distinct().toList();
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void setEntries(@ForAll("setEntries") SetEntry entry) {
    written("set-entry", ListsJson.SETS, entry);
  }

  @Provide
  Arbitrary<Fitting> fittings() {
    return Combinators.combine(
            names(),
            Arbitraries.of(Join.Place.class),
            names().map(ElementId::new),
            names().map(ElementId::new),
            dates(),
            Arbitraries.of(YesNoUnknown.class),
            perhaps(lengths()))
        .as(Fitting::new);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void fittings(@ForAll("fittings") Fitting entry) {
    written("fitting", ListsJson.FITTINGS, entry);
  }

  @Provide
  Arbitrary<DeliveredOrder> orders() {
    Arbitrary<Order> orders =
        Combinators.combine(
                names(),
                Arbitraries.of(ElementKind.class),
                Arbitraries.of(Use.class),
                perhaps(Combinators.combine(names(), names()).as(GearModel::new)),
                Arbitraries.maps(names(), Arbitraries.integers().between(1, 100_000))
                    .ofMinSize(1)
                    .ofMaxSize(3),
                perhaps(names()),
                Arbitraries.integers().between(0, 1200))
            .as(Order::new);
    Arbitrary<Element> elements =
        names()
            .map(
                id -> Element.builder(new ElementId(id), ElementKind.HOOD, Use.STRUCTURAL).build());
    return Combinators.combine(orders, elements.list().ofMaxSize(3)).as(DeliveredOrder::new);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void orders(@ForAll("orders") DeliveredOrder entry) {
    String json = ListsJson.ORDERS.write(entry);
    assertThat(TableSchemas.objections("order", json)).as(json).isEmpty();
    DeliveredOrder read = ListsJson.ORDERS.read("list", json).orElseThrow();
    assertThat(read.order()).isEqualTo(entry.order());
    assertThat(ListsJson.ORDERS.write(read)).isEqualTo(json);
  }

  @Provide
  Arbitrary<SafetyNotice> notices() {
    return Combinators.combine(
            names(),
            Arbitraries.of(SafetyNotice.Asks.class),
            Arbitraries.of(ElementKind.class).set().ofMaxSize(3),
            names(),
            names().set().ofMaxSize(2),
            names().set().ofMaxSize(2),
            Arbitraries.of("2018", "UNKNOWN").map(MarkedDate::parse),
            Arbitraries.of("2021-03", "UNKNOWN").map(MarkedDate::parse))
        .as(SafetyNotice::new);
  }

  @Property(tries = 200, edgeCases = EdgeCasesMode.NONE)
  void notices(@ForAll("notices") SafetyNotice entry) {
    written("notice", ListsJson.NOTICES, entry);
  }

  @Provide
  Arbitrary<CostEntry> costs() {
    Arbitrary<CostEntry> gear =
        Combinators.combine(
                Arbitraries.of(ElementKind.class),
                Arbitraries.of(Use.class),
                perhaps(Arbitraries.of(LayerKind.class)),
                amounts(1))
            .as(
                (kind, use, layer, amount) ->
                    new CostEntry.NewGear(new UnitCost(kind, use, layer, amount)));
    Arbitrary<CostEntry> cleaning =
        Combinators.combine(Arbitraries.of(CleaningKind.class), amounts(0))
            .as(CostEntry.Cleaning::new);
    Arbitrary<CostEntry> repair =
        Combinators.combine(Arbitraries.of(RepairClass.class), amounts(0))
            .as(CostEntry.Repair::new);
    Arbitrary<CostEntry> worth =
        Combinators.combine(
                Arbitraries.of(CostPolicy.Against.class),
                Arbitraries.integers().between(1, 1000).map(BigDecimal::valueOf))
            .as((against, most) -> new CostEntry.Worth(new CostPolicy(against, most)));
    return Arbitraries.oneOf(gear, cleaning, repair, worth);
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void costs(@ForAll("costs") CostEntry entry) {
    written("cost", ListsJson.COSTS, entry);
  }

  /** What a schema refuses of an entry, its reader refuses as well, in the same place. */
  @Property(tries = 1)
  void aFieldOfAnotherEntryIsRefusedByBoth() {
    for (Map.Entry<String, String> line :
        Map.of(
                "set-entry",
                "{\"entry\":\"NEEDS\",\"use\":\"STRUCTURAL\",\"ways\":[[\"COAT\"]],\"kind\":\"COAT\"}",
                "cost",
                "{\"of\":\"CLEANING\",\"cleaning\":\"ADVANCED\",\"amount\":1,\"kind\":\"COAT\"}")
            .entrySet()) {
      assertThat(TableSchemas.objections(line.getKey(), line.getValue()))
          .singleElement()
          .asString()
          .contains("'kind'");
      Checked<?, JsonFault> read =
          line.getKey().equals("cost")
              ? ListsJson.COSTS.read("list", line.getValue())
              : ListsJson.SETS.read("list", line.getValue());
      assertThat(((Checked.Refused<?, JsonFault>) read).faults())
          .singleElement()
          .matches(fault -> fault.pointer().equals("/kind"));
    }
  }
}
