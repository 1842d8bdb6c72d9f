package org.ensemblerules.tables.codec;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
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
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.source.Basis;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.tables.message.CostEntry;
import org.ensemblerules.tables.message.DeliveredOrder;
import org.ensemblerules.tables.message.KeptGear;
import org.ensemblerules.tables.message.SetEntry;

/** The JSON form of the entries of a department's lists. */
public final class ListsTree {
  private static final int MOST_OF_A_SIZE = 100_000;
  private static final int MOST_MONTHS = 1200;

  /** What an entry about sets says. */
  private enum Says {
    NEEDS,
    MEETS,
    FITS
  }

  /** What an entry of costs is of. */
  private enum Of {
    NEW_GEAR,
    CLEANING,
    REPAIR,
    WORTH
  }

  private ListsTree() {}

  /** Reads a member. */
  public static Optional<Member> readMember(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> name = object.required("name", JsonCursor::text);
    Optional<String> station = object.optional("station", JsonCursor::text);
    Optional<List<Use>> uses =
        object.required("uses", value -> value.distinctOrNone(one -> one.enumOf(Use.class)));
    Optional<Map<ElementKind, String>> sizes = object.optional("sizes", ListsTree::sizesNeeded);
    return object.make(
        () ->
            new Member(
                name.orElseThrow(), station, set(uses.orElseThrow()), sizes.orElse(Map.of())));
  }

  private static Set<Use> set(List<Use> uses) {
    return uses.isEmpty() ? Set.of() : EnumSet.copyOf(uses);
  }

  private static Optional<Map<ElementKind, String>> sizesNeeded(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<ElementKind, String> sizes = new EnumMap<>(ElementKind.class);
    for (ElementKind kind : ElementKind.values()) {
      object.optional(kind.name(), JsonCursor::text).ifPresent(size -> sizes.put(kind, size));
    }
    return object.make(() -> sizes);
  }

  /** Writes a member. */
  public static JsonNode write(Member member) {
    Fields fields =
        new Fields()
            .put("name", member.name())
            .known("station", member.station())
            .list("uses", member.uses());
    if (!member.sizes().isEmpty()) {
      Fields sizes = new Fields();
      member.sizes().forEach((kind, size) -> sizes.put(kind.name(), size));
      fields.put("sizes", sizes.node());
    }
    return fields.node();
  }

  /** Reads where an element is. */
  public static Optional<KeptGear> readWhereabouts(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<ElementId> element = object.required("element", id -> id.parsed(ElementId::new));
    Optional<String> holder = object.optional("holder", JsonCursor::text);
    Optional<String> station = object.optional("station", JsonCursor::text);
    Optional<String> place = object.optional("place", JsonCursor::text);
    Optional<LocalDate> back = object.optional("expectedBack", ValueReaders::day);
    return object.make(
        () -> new KeptGear(element.orElseThrow(), new Whereabouts(holder, station, place, back)));
  }

  /** Writes where an element is. */
  public static JsonNode write(KeptGear kept) {
    return where(new Fields().put("element", kept.element()), kept.where()).node();
  }

  /** Puts who has an element and where it is. */
  static Fields where(Fields fields, Whereabouts where) {
    return fields
        .known("holder", where.holder())
        .known("station", where.station())
        .known("place", where.place())
        .known("expectedBack", where.expectedBack());
  }

  /** Reads an entry about sets. */
  public static Optional<SetEntry> readSetEntry(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Says> says = object.required("entry", value -> value.enumOf(Says.class));
    if (says.isEmpty()) {
      return Optional.empty();
    }
    return switch (says.get()) {
      case NEEDS -> {
        Optional<Use> use = use(object);
        Optional<List<Set<ElementKind>>> ways =
            object.required("ways", list -> list.distinct(way -> way.setOf(ElementKind.class)));
        Basis basis = basis(object);
        yield object.make(
            () -> new SetEntry.Needs(new SetRow(use.orElseThrow(), ways.orElseThrow(), basis)));
      }
      case MEETS -> {
        Optional<Use> use = use(object);
        Optional<Join.Place> place =
            object.required("place", value -> value.enumOf(Join.Place.class));
        Optional<Quantity> least = object.optional("leastOverlap", ListsTree::length);
        Basis basis = basis(object);
        yield object.make(
            () ->
                new SetEntry.Meets(new Join(place.orElseThrow(), use.orElseThrow(), least, basis)));
      }
      case FITS -> {
        Optional<ElementKind> kind = kind(object);
        Optional<String> needed = object.required("needed", JsonCursor::text);
        Optional<List<String>> fitting =
            object.required("fitting", list -> list.distinct(JsonCursor::text));
        Basis basis = basis(object);
        yield object.make(
            () ->
                new SetEntry.Fits(
                    new SizeFit(
                        kind.orElseThrow(),
                        needed.orElseThrow(),
                        Set.copyOf(fitting.orElseThrow()),
                        basis)));
      }
    };
  }

  /** Without a basis it is what the department does. */
  private static Basis basis(ObjectCursor object) {
    return object.optional("basis", BasisJson::read).orElseGet(Basis.CommonPractice::new);
  }

  private static Optional<Use> use(ObjectCursor object) {
    return object.required("use", value -> value.enumOf(Use.class));
  }

  private static Optional<ElementKind> kind(ObjectCursor object) {
    return object.required("kind", value -> value.enumOf(ElementKind.class));
  }

  private static Optional<Quantity> length(JsonCursor at) {
    return ValueReaders.quantityOf(at, Dimension.LENGTH);
  }

  /** Writes an entry about sets. */
  public static JsonNode write(SetEntry entry) {
    if (entry instanceof SetEntry.Needs needs) {
      return new Fields()
          .put("entry", Says.NEEDS)
          .put("use", needs.row().use())
          .list("ways", needs.row().ways(), ListsTree::names)
          .put("basis", BasisJson.write(needs.row().basis()))
          .node();
    } else if (entry instanceof SetEntry.Meets meets) {
      return new Fields()
          .put("entry", Says.MEETS)
          .put("use", meets.join().use())
          .put("place", meets.join().place())
          .known("leastOverlap", meets.join().leastOverlap(), QuantityJson::write)
          .put("basis", BasisJson.write(meets.join().basis()))
          .node();
    }
    SizeFit fit = ((SetEntry.Fits) entry).fit();
    return new Fields()
        .put("entry", Says.FITS)
        .put("kind", fit.kind())
        .put("needed", fit.needed())
        .list("fitting", fit.fitting())
        .put("basis", BasisJson.write(fit.basis()))
        .node();
  }

  private static JsonNode names(Set<ElementKind> way) {
    var names = JsonNodeFactory.instance.arrayNode();
    way.forEach(kind -> names.add(kind.name()));
    return names;
  }

  /** Reads how two elements were seen to meet. */
  public static Optional<Fitting> readFitting(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> member = object.required("member", JsonCursor::text);
    Optional<Join.Place> place = object.required("place", value -> value.enumOf(Join.Place.class));
    Optional<ElementId> one = object.required("one", id -> id.parsed(ElementId::new));
    Optional<ElementId> other = object.required("other", id -> id.parsed(ElementId::new));
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<YesNoUnknown> good =
        object.optional("good", value -> value.enumOf(YesNoUnknown.class));
    Optional<Quantity> overlap = object.optional("overlap", ListsTree::length);
    return object.make(
        () ->
            new Fitting(
                member.orElseThrow(),
                place.orElseThrow(),
                one.orElseThrow(),
                other.orElseThrow(),
                on.orElseThrow(),
                good.orElse(YesNoUnknown.UNKNOWN),
                overlap));
  }

  /** Writes how two elements were seen to meet. */
  public static JsonNode write(Fitting fitting) {
    return new Fields()
        .put("member", fitting.member())
        .put("place", fitting.place())
        .put("one", fitting.one())
        .put("other", fitting.other())
        .put("on", fitting.on())
        .known("good", fitting.good())
        .known("overlap", fitting.overlap(), QuantityJson::write)
        .node();
  }

  /** Reads an order and what came for it. */
  public static Optional<DeliveredOrder> readOrder(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Order> order = object.required("order", ListsTree::order);
    Optional<List<Element>> delivered =
        object.required("delivered", list -> list.list(ElementJson::read));
    return object.make(() -> new DeliveredOrder(order.orElseThrow(), delivered.orElseThrow()));
  }

  private static Optional<Order> order(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> id = object.required("id", JsonCursor::text);
    Optional<ElementKind> kind = kind(object);
    Optional<Use> use = use(object);
    Optional<GearModel> model = object.optional("model", ListsTree::model);
    Optional<Map<String, Integer>> sizes = object.required("sizes", ListsTree::sizesOrdered);
    Optional<String> edition = object.optional("claimedEdition", JsonCursor::text);
    Optional<Integer> months =
        object.optional("leastMonths", value -> value.integer(0, MOST_MONTHS));
    return object.make(
        () ->
            new Order(
                id.orElseThrow(),
                kind.orElseThrow(),
                use.orElseThrow(),
                model,
                sizes.orElseThrow(),
                edition,
                months.orElse(0)));
  }

  private static Optional<GearModel> model(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> manufacturer = object.required("manufacturer", JsonCursor::text);
    Optional<String> model = object.required("model", JsonCursor::text);
    return object.make(() -> new GearModel(manufacturer.orElseThrow(), model.orElseThrow()));
  }

  private static Optional<Map<String, Integer>> sizesOrdered(JsonCursor at) {
    ObjectCursor object = at.object();
    Map<String, Integer> sizes = new TreeMap<>();
    for (String size : object.names()) {
      object
          .required(size, value -> value.integer(1, MOST_OF_A_SIZE))
          .ifPresent(count -> sizes.put(size, count));
    }
    return object.make(() -> sizes);
  }

  /** Writes an order and what came for it. */
  public static JsonNode write(DeliveredOrder entry) {
    return new Fields()
        .put("order", write(entry.order()))
        .list("delivered", entry.delivered(), ElementJson::write)
        .node();
  }

  /** Writes an order. */
  static JsonNode write(Order order) {
    return new Fields()
        .put("id", order.id())
        .put("kind", order.kind())
        .put("use", order.use())
        .known("model", order.model(), ListsTree::write)
        .put("sizes", counts(order.sizes()))
        .known("claimedEdition", order.claimedEdition())
        .put("leastMonths", order.leastMonths())
        .node();
  }

  private static JsonNode write(GearModel model) {
    return new Fields()
        .put("manufacturer", model.manufacturer())
        .put("model", model.model())
        .node();
  }

  /** Writes how many of each size. */
  static JsonNode counts(Map<String, Integer> sizes) {
    Fields fields = new Fields();
    sizes.forEach((size, count) -> fields.put(size, count.intValue()));
    return fields.node();
  }

  /** Reads a safety notice. */
  public static Optional<SafetyNotice> readNotice(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<String> id = object.required("id", JsonCursor::text);
    Optional<SafetyNotice.Asks> asks =
        object.required("asks", value -> value.enumOf(SafetyNotice.Asks.class));
    Optional<Set<ElementKind>> kinds =
        object.optional("kinds", value -> value.setOf(ElementKind.class));
    Optional<String> manufacturer = object.required("manufacturer", JsonCursor::text);
    Optional<List<String>> models =
        object.optional("models", value -> value.distinct(JsonCursor::text));
    Optional<List<String>> lots =
        object.optional("lots", value -> value.distinct(JsonCursor::text));
    Optional<MarkedDate> from = object.optional("madeFrom", ValueReaders::markedDate);
    Optional<MarkedDate> through = object.optional("madeThrough", ValueReaders::markedDate);
    return object.make(
        () ->
            new SafetyNotice(
                id.orElseThrow(),
                asks.orElseThrow(),
                kinds.orElse(Set.of()),
                manufacturer.orElseThrow(),
                Set.copyOf(models.orElse(List.of())),
                Set.copyOf(lots.orElse(List.of())),
                from.orElseGet(MarkedDate::unknown),
                through.orElseGet(MarkedDate::unknown)));
  }

  /** Writes a safety notice. */
  public static JsonNode write(SafetyNotice notice) {
    return new Fields()
        .put("id", notice.id())
        .put("asks", notice.asks())
        .some("kinds", notice.kinds())
        .put("manufacturer", notice.manufacturer())
        .some("models", notice.models())
        .some("lots", notice.lots())
        .known("madeFrom", notice.madeFrom())
        .known("madeThrough", notice.madeThrough())
        .node();
  }

  /** Reads an entry of what things cost. */
  public static Optional<CostEntry> readCost(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Of> of = object.required("of", value -> value.enumOf(Of.class));
    if (of.isEmpty()) {
      return Optional.empty();
    }
    return switch (of.get()) {
      case NEW_GEAR -> {
        Optional<ElementKind> kind = kind(object);
        Optional<Use> use = use(object);
        Optional<LayerKind> layer =
            object.optional("layer", value -> value.enumOf(LayerKind.class));
        Optional<BigDecimal> amount = amount(object);
        yield object.make(
            () ->
                new CostEntry.NewGear(
                    new UnitCost(
                        kind.orElseThrow(), use.orElseThrow(), layer, amount.orElseThrow())));
      }
      case CLEANING -> {
        Optional<CleaningKind> cleaning =
            object.required("cleaning", value -> value.enumOf(CleaningKind.class));
        Optional<BigDecimal> amount = amount(object);
        yield object.make(
            () -> new CostEntry.Cleaning(cleaning.orElseThrow(), amount.orElseThrow()));
      }
      case REPAIR -> {
        Optional<RepairClass> repair =
            object.required("class", value -> value.enumOf(RepairClass.class));
        Optional<BigDecimal> amount = amount(object);
        yield object.make(() -> new CostEntry.Repair(repair.orElseThrow(), amount.orElseThrow()));
      }
      case WORTH -> {
        Optional<CostPolicy.Against> against =
            object.required("against", value -> value.enumOf(CostPolicy.Against.class));
        Optional<BigDecimal> most = object.required("mostPercent", JsonCursor::decimalOrText);
        yield object.make(
            () -> new CostEntry.Worth(new CostPolicy(against.orElseThrow(), most.orElseThrow())));
      }
    };
  }

  private static Optional<BigDecimal> amount(ObjectCursor object) {
    return object.required("amount", JsonCursor::decimalOrText);
  }

  /** Writes an entry of what things cost. */
  public static JsonNode write(CostEntry entry) {
    if (entry instanceof CostEntry.NewGear gear) {
      return new Fields()
          .put("of", Of.NEW_GEAR)
          .put("kind", gear.cost().kind())
          .put("use", gear.cost().use())
          .known("layer", gear.cost().layer())
          .put("amount", amount(gear.cost().amount()))
          .node();
    } else if (entry instanceof CostEntry.Cleaning cleaning) {
      return new Fields()
          .put("of", Of.CLEANING)
          .put("cleaning", cleaning.cleaning())
          .put("amount", amount(cleaning.amount()))
          .node();
    } else if (entry instanceof CostEntry.Repair repair) {
      return new Fields()
          .put("of", Of.REPAIR)
          .put("class", repair.repair())
          .put("amount", amount(repair.amount()))
          .node();
    }
    CostPolicy policy = ((CostEntry.Worth) entry).policy();
    return new Fields()
        .put("of", Of.WORTH)
        .put("against", policy.against())
        .put("mostPercent", policy.mostPercent())
        .node();
  }

  /** An amount as text, which no reader rounds. */
  static String amount(BigDecimal amount) {
    return amount.toPlainString();
  }
}
