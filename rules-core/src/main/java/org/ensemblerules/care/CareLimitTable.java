package org.ensemblerules.care;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.Multimaps;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Use;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.source.Checked;
import org.ensemblerules.source.TableFault;
import org.ensemblerules.source.cells.Cells;

/**
 * Within what a wash must stay to count as a cleaning.
 *
 * @since 0.1
 */
public final class CareLimitTable {
  private record Cell(
      ElementKind element,
      Use use,
      Optional<LayerKind> layer,
      String subject,
      Optional<Bound> direction) {
    static Cell of(CareLimitRow row) {
      return new Cell(
          row.element(),
          row.use(),
          row.layer(),
          row.demand().subject(),
          row.demand() instanceof CareDemand.Within within
              ? Optional.of(within.limit().bound())
              : Optional.empty());
    }
  }

  private record Gear(ElementKind element, Use use) {}

  private final ImmutableList<CareLimitRow> own;
  private final ImmutableListMultimap<Gear, CareLimitRow> ownOf;
  private final ImmutableList<CareLimitRow> beside;
  private final ModelLimits models;

  private CareLimitTable(List<CareLimitRow> own, List<CareLimitRow> beside, ModelLimits models) {
    this.own = ImmutableList.copyOf(own);
    this.ownOf = Multimaps.index(own, row -> new Gear(row.element(), row.use()));
    this.beside = ImmutableList.copyOf(beside);
    this.models = models;
  }

  /**
   * Compiles rows.
   *
   * @param rows the rows; not null
   * @return the table, or a fault for each limit of another dimension than what it limits, and each
   *     said twice in one direction for the same element and layer
   */
  public static Checked<CareLimitTable, TableFault> of(List<CareLimitRow> rows) {
    List<TableFault> faults = new ArrayList<>();
    rows.forEach(row -> dimension(row, faults::add));
    faults.addAll(
        Cells.of(
                rows,
                Cell::of,
                "demand",
                row -> row.demand().subject(),
                "each subject once in each direction per element, use and layer")
            .faults());
    return Checked.of(faults, () -> new CareLimitTable(rows, List.of(), ModelLimits.none()));
  }

  private static void dimension(CareLimitRow row, Consumer<TableFault> faults) {
    if (row.demand() instanceof CareDemand.Within within
        && within.limit().value().unit().dimension() != within.measure().dimension()) {
      faults.accept(
          new TableFault(
              row.key(),
              "demand",
              within.limit().toString(),
              "a limit of dimension " + within.measure().dimension()));
    }
  }

  /**
   * Adds rows as overlays have them. Those of laws and policies apply beside the rows of this table
   * and replace none. Those of a manufacturer's instructions apply to one model: a looser one in
   * place of the row that it names, where the label certainly says the model; any other beside all
   * rows, unless the label certainly says another model.
   *
   * @param more the rows of laws and policies; not null
   * @param instructed the rows of manufacturers' instructions; not null
   * @param anatomy which labels elements must carry; not null
   * @return the table of all, or a fault for each limit of another dimension than what it limits,
   *     and for each row named to be replaced that limits something else
   */
  public Checked<CareLimitTable, TableFault> with(
      List<CareLimitRow> more, List<ModelCareLimitRow> instructed, AnatomyTable anatomy) {
    List<TableFault> faults = new ArrayList<>();
    more.forEach(row -> dimension(row, faults::add));
    instructed.forEach(row -> dimension(row.limit(), faults::add));
    ModelLimits limits =
        ModelLimits.of(
            Stream.concat(models.rows().stream(), instructed.stream()).toList(),
            own,
            anatomy,
            faults::add);
    return Checked.of(
        faults,
        () ->
            new CareLimitTable(
                own, Stream.concat(beside.stream(), more.stream()).toList(), limits));
  }

  /**
   * Judges a wash of which nobody has said when it was done.
   *
   * @param wash how it was washed; not null
   * @param element what was washed; not null
   * @param layers which of its layers were washed; empty if it has none or nobody has said, so that
   *     the rows for every layer hold; not null
   * @return the answer; never null
   */
  public WashAnswer judge(WashRecord wash, Element element, Set<LayerKind> layers) {
    return judge(wash, element, layers, MarkedDate.unknown(), false);
  }

  /**
   * Judges a wash. What is limited and nobody stated keeps the wash from counting, but is no
   * finding; it rests on whoever states that all limits were kept. Where the edition has no row for
   * the element, no other row makes a wash count.
   *
   * @param wash how it was washed; not null
   * @param element what was washed; not null
   * @param layers which of its layers were washed; empty if it has none or nobody has said, so that
   *     the rows for every layer hold; not null
   * @param washed when it was washed; not null
   * @param limitsKept whether its doer states that all limits were kept
   * @return the answer; never null
   */
  public WashAnswer judge(
      WashRecord wash,
      Element element,
      Set<LayerKind> layers,
      MarkedDate washed,
      boolean limitsKept) {
    List<ModelLimits.Held> held = models.of(element, layers, washed);
    List<CareLimitRow> own = own(element, layers);
    boolean ruled = !own.isEmpty();
    List<CareLimitRow> asked =
        held.isEmpty() && beside.isEmpty() ? own : asked(own, held, element, layers);
    List<WashDeviation> deviations = deviations(asked, wash, limitsKept);
    if (!ruled && deviations.isEmpty()) {
      return new WashAnswer.NoRule();
    }
    List<Loosened> loosened = loosened(held, wash, limitsKept);
    return deviations.isEmpty()
        ? new WashAnswer.Counts(asked, loosened)
        : new WashAnswer.OutsideLimits(deviations, loosened);
  }

  /** The table's own rows; all of them hold where no layer is named. */
  private List<CareLimitRow> own(Element element, Set<LayerKind> layers) {
    ImmutableList<CareLimitRow> all = ownOf.get(new Gear(element.kind(), element.use()));
    return layers.isEmpty()
        ? all
        : all.stream().filter(row -> row.holdsFor(element, layers)).toList();
  }

  private List<CareLimitRow> asked(
      List<CareLimitRow> own, List<ModelLimits.Held> held, Element element, Set<LayerKind> layers) {
    List<CareLimitRow> asked = new ArrayList<>(own);
    held.forEach(each -> each.inPlaceOf().ifPresent(asked::remove));
    for (CareLimitRow row : beside) {
      if (row.holdsFor(element, layers)) {
        asked.add(row);
      }
    }
    held.forEach(each -> asked.add(each.row().limit()));
    return asked;
  }

  private static List<WashDeviation> deviations(
      List<CareLimitRow> asked, WashRecord wash, boolean limitsKept) {
    if (limitsKept && wash.isEmpty()) {
      return List.of();
    }
    List<WashDeviation> deviations = new ArrayList<>();
    for (CareLimitRow row : asked) {
      WashDeviation.of(row, wash, limitsKept).ifPresent(deviations::add);
    }
    return deviations;
  }

  private static List<Loosened> loosened(
      List<ModelLimits.Held> held, WashRecord wash, boolean limitsKept) {
    if (held.isEmpty()) {
      return List.of();
    }
    // Two layers may replace one row; then both are asked, and the stricter decides.
    Set<CareLimitRow> notKept = new HashSet<>();
    held.stream()
        .filter(each -> WashDeviation.of(each.row().limit(), wash, limitsKept).isPresent())
        .forEach(each -> each.inPlaceOf().ifPresent(notKept::add));
    List<Loosened> all = new ArrayList<>();
    for (ModelLimits.Held each : held) {
      each.inPlaceOf()
          .map(
              row ->
                  new Loosened(
                      each.row(),
                      row,
                      WashDeviation.of(row, wash, limitsKept)
                          .filter(spared -> !notKept.contains(row))))
          .ifPresent(all::add);
    }
    return all;
  }

  /**
   * Returns the rows for elements of every model.
   *
   * @return the table's own rows in table order, then those added beside them; never null
   */
  public List<CareLimitRow> rows() {
    return ImmutableList.<CareLimitRow>builder().addAll(own).addAll(beside).build();
  }

  /**
   * Returns the rows of manufacturers' instructions.
   *
   * @return the rows, each for one model; empty if no overlay has any; never null
   */
  public List<ModelCareLimitRow> modelRows() {
    return models.rows();
  }
}
