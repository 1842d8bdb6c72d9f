package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;

/**
 * What of a history counts by a day, and for what does not, why not. Each event is judged once,
 * when it is first asked for; whoever asks what is due, what is open or what keeps an element out
 * reads it here. Safe for use by many threads.
 *
 * @since 0.1
 */
public final class Evidence {
  private final Judging judging;
  private final Element element;
  private final History history;
  private final LocalDate asOf;
  private final Judgments judgments;
  private final Latest latest;
  private final InspectionsMade inspections;
  private final Shown shown;
  private final Done done;
  private final Absence absence;
  private final Supplier<DayOrder> order = Suppliers.memoize(() -> new DayOrder(this));
  private final Supplier<OpenFindings> findings;
  private final Supplier<ImmutableList<ExposureEvent.Exposed>> exposures =
      Suppliers.memoize(this::exposuresAsKnown);

  private Evidence(
      Judging judging, EvidenceTables tables, Element element, History history, LocalDate asOf) {
    Objects.requireNonNull(tables, "tables");
    this.judging = judging;
    this.element = Objects.requireNonNull(element, "element");
    this.history = Objects.requireNonNull(history, "history");
    this.asOf = Objects.requireNonNull(asOf, "asOf");
    this.judgments = new Judgments(judging, history);
    this.latest = new Latest(tables, element, history, judgments, asOf);
    this.inspections = new InspectionsMade(this, tables.criteria());
    this.shown = new Shown(this, tables.validity());
    this.done = new Done(this, latest);
    this.absence = new Absence(this, tables.returns());
    this.findings = Suppliers.memoize(() -> new OpenFindings(tables, this, judging));
  }

  /**
   * Decides what of a history counts.
   *
   * @param tables by what it is decided; not null
   * @param element the element; not null
   * @param history what happened to it; not null
   * @param asOf the day asked about; what happened later does not count; not null
   * @return the evidence; never null
   */
  public static Evidence of(
      EvidenceTables tables, Element element, History history, LocalDate asOf) {
    return of(new EventJudge(tables, element, history, asOf), tables, element, history, asOf);
  }

  static Evidence of(
      Judging judging, EvidenceTables tables, Element element, History history, LocalDate asOf) {
    return new Evidence(judging, tables, element, history, asOf);
  }

  /**
   * Returns the element.
   *
   * @return the element; never null
   */
  public Element element() {
    return element;
  }

  /**
   * Returns what happened to it.
   *
   * @return the history; never null
   */
  public History history() {
    return history;
  }

  /**
   * Returns the day asked about.
   *
   * @return the day; never null
   */
  public LocalDate asOf() {
    return asOf;
  }

  /**
   * Lists where the element must carry labels, as {@link LabeledLayers} has it.
   *
   * @return the labeled layers in order; empty in place of a layer stands for the element's own
   *     label; never null
   */
  public List<Optional<LayerKind>> labeledLayers() {
    return judging.labeledLayers();
  }

  Latest latest() {
    return latest;
  }

  /**
   * Tells whether an event counts, and why not.
   *
   * @param event the event; not null
   * @return its judgment; empty for an event that is not of this history, or that discharges
   *     nothing, as a use does
   */
  public Optional<Judgment> judgment(Event event) {
    return judgments.of(event);
  }

  /**
   * Tells whether an event of this history counts.
   *
   * @param event the event; not null
   * @return true only if it was judged and nothing speaks against it
   */
  public boolean counts(Event event) {
    return judgments.counts(event);
  }

  /**
   * Tells on whose word it rests that an event counts.
   *
   * @param event the event; not null
   * @return that its doer may do it, by a word of the organization; empty if it does not count, or
   *     counts without such a word
   */
  public Optional<Permission.Permitted> onTheWordOf(Event event) {
    return judging.onTheWordOf(event).filter(may -> counts(event));
  }

  /**
   * Lists the events of one kind that count.
   *
   * @param kind the kind; not null
   * @param <E> the kind
   * @return the events in the order of the history; never null
   */
  public <E extends Event> List<E> counting(Class<E> kind) {
    ImmutableList.Builder<E> counting = ImmutableList.builder();
    for (E event : history.events(kind)) {
      if (counts(event)) {
        counting.add(event);
      }
    }
    return counting.build();
  }

  /**
   * Lists everything of a sort that was judged, whether or not it counts.
   *
   * @param sort which events; not null
   * @return the judgments, the newest first; never null
   */
  public List<Judgment> judgments(Predicate<Event> sort) {
    ImmutableList.Builder<Judgment> found = ImmutableList.builder();
    for (Event event : Lists.reverse(history.events())) {
      if (sort.test(event)) {
        judgment(event).ifPresent(found::add);
      }
    }
    return found.build();
  }

  /**
   * Lists what of a sort does not count and is newer than the last that does. What is certainly
   * later than the day asked about is left out, and so is what counts with another that it goes on
   * with. {@link #judgments} lists the older ones as well.
   *
   * @param sort which events; not null
   * @return the judgments, the newest first; never null
   */
  public List<Judgment> notCounting(Predicate<Event> sort) {
    List<Judgment> found = new ArrayList<>();
    for (Event event : Lists.reverse(history.events())) {
      if (sort.test(event) && event.when().date().possiblyBy(asOf)) {
        if (counts(event)) {
          break;
        }
        judgment(event).filter(each -> !each.goesOn()).ifPresent(found::add);
      }
    }
    return ImmutableList.copyOf(found);
  }

  /**
   * Lists what the element met, or may have met, as far as it is known by now. What nobody had
   * named is what it was identified as once somebody permitted says so, certainly by the day asked
   * about and not before it met it; until then it is both. What has a name keeps it beside any
   * other.
   *
   * @return the exposures in the order of the history; never null
   */
  public List<ExposureEvent.Exposed> exposures() {
    return exposures.get();
  }

  private ImmutableList<ExposureEvent.Exposed> exposuresAsKnown() {
    List<ExposureEvent.Exposed> met = history.events(ExposureEvent.Exposed.class);
    if (history.events(ExposureEvent.ExposureIdentified.class).isEmpty()) {
      return ImmutableSet.copyOf(met).asList();
    }
    return met.stream().flatMap(this::asKnown).distinct().collect(ImmutableList.toImmutableList());
  }

  private Stream<ExposureEvent.Exposed> asKnown(ExposureEvent.Exposed met) {
    List<ExposureEvent.ExposureIdentified> said =
        history.events(ExposureEvent.ExposureIdentified.class).stream()
            .filter(each -> each.met().equals(met.when()))
            .filter(each -> each.when().date().possiblyBy(asOf))
            .toList();
    boolean named =
        met.to() == Exposure.UNKNOWN
            && said.stream()
                .anyMatch(
                    each ->
                        counts(each) && each.when().date().certainlyNotBefore(met.when().date()));
    return Stream.concat(
        named ? Stream.empty() : Stream.of(met),
        said.stream().map(each -> new ExposureEvent.Exposed(met.when(), each.as())));
  }

  /**
   * Returns which inspections count, and which were not made good.
   *
   * @return the answers; never null
   */
  public InspectionsMade inspections() {
    return inspections;
  }

  /**
   * Returns what checks and washes themselves show.
   *
   * @return the answers; never null
   */
  public Shown shown() {
    return shown;
  }

  /**
   * Returns what was done since a moment.
   *
   * @return the answers; never null
   */
  public Done done() {
    return done;
  }

  /**
   * Returns where the element is.
   *
   * @return the answers; never null
   */
  public Absence absence() {
    return absence;
  }

  /**
   * Returns what came after what on one day.
   *
   * @return the answers; never null
   */
  public DayOrder order() {
    return order.get();
  }

  /**
   * Returns which findings, decisions and failures are still open.
   *
   * @return the answers; never null
   */
  public OpenFindings findings() {
    return findings.get();
  }
}
