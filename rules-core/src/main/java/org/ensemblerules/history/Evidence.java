package org.ensemblerules.history;

import com.google.common.base.Suppliers;
import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableListMultimap;
import com.google.common.collect.ImmutableSet;
import com.google.common.collect.Lists;
import com.google.common.collect.Sets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.WashAnswer;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.Permission;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;

/**
 * What of a history counts by a day, and for what does not, why not: inspections, cleanings,
 * checks, repairs, answers to findings, returns. Each event is judged once, when it is first asked
 * for; whoever asks what is due, what is open or what keeps an element out reads it here. Safe for
 * use by many threads.
 */
public final class Evidence {
  private static final Set<CleaningKind> CLEANED_THROUGH =
      Sets.immutableEnumSet(CleaningKind.ADVANCED, CleaningKind.SPECIALIZED);

  private final Judging judging;
  private final EvidenceTables tables;
  private final Element element;
  private final History history;
  private final LocalDate asOf;
  private final Judgments judgments;
  private final Latest latest;
  private final Supplier<OpenFindings> open;
  private final Supplier<ImmutableListMultimap<LocalDate, Event>> byDay =
      Suppliers.memoize(this::eventsByDay);
  private final Supplier<OneADay> uses = Suppliers.memoize(() -> ofItsDay(Occasion.AFTER_USE));
  private final Supplier<OneADay> returns =
      Suppliers.memoize(() -> ofItsDay(Occasion.AFTER_RETURN));

  private final Supplier<ImmutableList<Finding>> shown =
      Suppliers.memoize(() -> shownBy(Event.class));
  private final Supplier<ImmutableList<Finding>> shownByWashes =
      Suppliers.memoize(() -> shownBy(WorkEvent.Cleaned.class));
  private final Supplier<ImmutableList<Judgment>> notMadeGood =
      Suppliers.memoize(this::begunAndNotMadeGood);
  private final Supplier<ImmutableList<ExposureEvent.Exposed>> exposures =
      Suppliers.memoize(this::exposuresAsKnown);

  private Evidence(
      Judging judging, EvidenceTables tables, Element element, History history, LocalDate asOf) {
    this.judging = judging;
    this.tables = Objects.requireNonNull(tables, "tables");
    this.element = Objects.requireNonNull(element, "element");
    this.history = Objects.requireNonNull(history, "history");
    this.asOf = Objects.requireNonNull(asOf, "asOf");
    this.judgments = new Judgments(judging, history);
    this.latest = new Latest(tables, element, history, judgments, asOf);
    this.open = Suppliers.memoize(() -> new OpenFindings(tables, this, judging));
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
        judgment(event).filter(each -> !goesOn(each)).ifPresent(found::add);
      }
    }
    return ImmutableList.copyOf(found);
  }

  /**
   * Lists the inspections that answers rest on, each with how much the record has of it: of each
   * kind the last that counts, and the newest after that which does not.
   *
   * @return the inspections by kind; never null
   */
  public List<InspectionOnRecord> inspections() {
    ImmutableList.Builder<InspectionOnRecord> all = ImmutableList.builder();
    for (InspectionKind kind : InspectionKind.values()) {
      lastOnRecord(kind).map(InspectionOnRecord::of).ifPresent(all::add);
      List<Judgment> newer =
          notCounting(
              event ->
                  event instanceof LookEvent.Inspected done && done.inspection().kind() == kind);
      if (!newer.isEmpty()) {
        all.add(InspectionOnRecord.of(newer.get(0)));
      }
    }
    return all.build();
  }

  private Optional<Judgment> lastOnRecord(InspectionKind kind) {
    for (LookEvent.Inspected done : Lists.reverse(history.events(LookEvent.Inspected.class))) {
      if (done.inspection().kind() == kind && counts(done)) {
        return judgment(done);
      }
    }
    return Optional.empty();
  }

  /**
   * Lists the inspections that were begun and do not count, for more than their date, and that no
   * other has made good: one that counts, is certainly later, and looks at all that they should
   * have looked at (one of their kind, or a fuller one that covers it). Of a kind that such an
   * element does not have, an advanced one makes good. What goes on with another that was begun is
   * told with that one.
   *
   * @return the judgments, the newest first; never null
   */
  public List<Judgment> notMadeGood() {
    return notMadeGood.get();
  }

  private ImmutableList<Judgment> begunAndNotMadeGood() {
    ImmutableList.Builder<Judgment> found = ImmutableList.builder();
    for (LookEvent.Inspected begun : Lists.reverse(history.events(LookEvent.Inspected.class))) {
      if (begun.inspection().on().possiblyBy(asOf) && !madeGood(begun)) {
        Judgment judged = judgment(begun).orElseThrow();
        if (judged.objectsToMoreThanItsDate() && !goesOn(judged)) {
          found.add(judged);
        }
      }
    }
    return found.build();
  }

  /**
   * Finds the last of the inspections of a sort that count: whatever is certainly before any of
   * them is certainly before that one.
   *
   * @param sort which inspections; not null
   * @return when it was made; empty if none counts
   */
  public Optional<Moment> lastInspected(Predicate<Inspection> sort) {
    return latest.inspected(sort);
  }

  private static boolean goesOn(Judgment judged) {
    return judged.objection(Set.of(Objection.Code.COUNTS_WITH_ANOTHER)).isPresent();
  }

  private boolean madeGood(LookEvent.Inspected begun) {
    return latest.inspectedAfter(askedFor(begun), begun.when(), false);
  }

  private InspectionKind askedFor(LookEvent.Inspected begun) {
    InspectionKind kind = begun.inspection().kind();
    return hasCriteria(kind) ? kind : InspectionKind.ADVANCED;
  }

  /**
   * Tells whether there is such an inspection of such an element.
   *
   * @param kind the kind of inspection; not null
   * @return true if it has criteria
   */
  public boolean hasCriteria(InspectionKind kind) {
    return !tables.criteria().required(kind, element.kind(), element.use()).isEmpty();
  }

  /**
   * Tells whether a check was passed, in a way that counts, certainly after a moment.
   *
   * @param check the check; not null
   * @param moment the moment; not null
   * @return true if it was
   */
  public boolean passedAfter(Check check, Moment moment) {
    return latest.passedAfter(check, moment);
  }

  /**
   * Tells whether a check was passed for a finding, in a way that counts, certainly after a moment.
   *
   * @param check the check; not null
   * @param finding the finding; not null
   * @param moment the moment; not null
   * @return true if it was
   */
  public boolean passedAfter(Check check, FindingId finding, Moment moment) {
    return latest.passedAfterWork(check, finding, moment, false);
  }

  /**
   * Tells whether layers were cleaned in one way, so that it counts, certainly after a moment.
   * Layers washed apart count together; a cleaning that names none is one of the whole.
   *
   * @param kind the kind of cleaning; not null
   * @param layers the layers; empty for the element as a whole, which a cleaning of any layer is;
   *     not null
   * @param moment the moment; not null
   * @return true if all of them were
   */
  public boolean cleanedAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return latest.cleanedAfter(kind, layers, moment);
  }

  /**
   * Tells whether a check was passed for a finding, in a way that counts, after work done for that
   * finding: certainly later, or on its day if it states that it came after that work.
   *
   * @param check the check; not null
   * @param finding the finding; not null
   * @param work when the work was done; not null
   * @return true if it was
   */
  public boolean passedAfterWork(Check check, FindingId finding, Moment work) {
    return latest.passedAfterWork(check, finding, work, true);
  }

  /**
   * Finds the first advanced or specialized cleaning that counts and came certainly after a moment.
   *
   * @param moment the moment; not null
   * @return when it was: what is certainly after any of them is certainly after it; empty if there
   *     was none
   */
  public Optional<Moment> firstCleanedAfter(Moment moment) {
    return counting(WorkEvent.Cleaned.class).stream()
        .filter(done -> CLEANED_THROUGH.contains(done.kind()))
        .filter(done -> done.when().certainlyAfter(moment))
        .map(WorkEvent.Cleaned::when)
        .min(Moment.FIRST_CERTAIN);
  }

  /**
   * Tells whether an expert's evaluation was passed for a report that was not met, or that came to
   * no result: certainly later, or on its day, as it names the report.
   *
   * @param tested the report; not null
   * @return true if it was
   */
  public boolean evaluatedSince(LookEvent.Tested tested) {
    boolean alone =
        history.events(LookEvent.Tested.class).stream()
                .filter(other -> other.failure().equals(tested.failure()))
                .count()
            == 1;
    return followsNamed(Check.EXPERT_EVALUATION, tested.failure(), tested.when(), alone);
  }

  /** Whether a check was passed for what it names; on its day only if the name is of one thing. */
  boolean followsNamed(Check check, FindingId named, Moment moment, boolean nameOfOne) {
    return latest
        .passedFor(check, named)
        .filter(when -> when.follows(moment, nameOfOne))
        .isPresent();
  }

  boolean failedSince(Moment moment, FindingId finding) {
    return open.get().failedSince(moment, finding);
  }

  /**
   * Returns when a finding was last repaired or cleaned for, certainly by the day asked about,
   * whether or not that settled it.
   *
   * @param finding the finding; not null
   * @return the moment; empty if nothing was done
   */
  public Optional<Moment> workedOn(FindingId finding) {
    return latest.workedOn(finding);
  }

  /**
   * Lists what checks and washes themselves show to be wrong, as {@link Validity#findings} does.
   *
   * @return the findings in the order of the history, each once; never null
   */
  public List<Finding> shown() {
    return shown.get();
  }

  /**
   * Lists what the washes themselves show to be wrong.
   *
   * @return the findings in the order of the history, each once; never null
   */
  public List<Finding> shownByWashes() {
    return shownByWashes.get();
  }

  /**
   * Lists what a check or a wash itself shows to be wrong.
   *
   * @param event the event; not null
   * @return the findings; empty for what shows none
   */
  public List<Finding> shownBy(Event event) {
    if (event instanceof WorkEvent.Cleaned done) {
      // A wash of which no particulars are known shows nothing.
      return done.wash().isPresent() && wash(done) instanceof WashAnswer.OutsideLimits outside
          ? Validity.findings(done, outside).toList()
          : List.of();
    }
    return event instanceof LookEvent.Checked done
        ? tables.validity().findings(done).toList()
        : List.of();
  }

  private <E extends Event> ImmutableList<Finding> shownBy(Class<E> kind) {
    ImmutableSet.Builder<Finding> shown = ImmutableSet.builder();
    for (E event : history.events(kind)) {
      shown.addAll(shownBy(event));
    }
    return shown.build().asList();
  }

  private WashAnswer wash(WorkEvent.Cleaned done) {
    return judgment(done).flatMap(Judgment::wash).orElseGet(WashAnswer.NoRule::new);
  }

  /**
   * Lists the washes that keep a limit only because a manufacturer's instructions put it in place
   * of a stricter one, as {@link Validity#loosened} does.
   *
   * @return the washes in the order of the history, once for each such limit; never null
   */
  public List<LoosenedWash> loosened() {
    ImmutableList.Builder<LoosenedWash> loosened = ImmutableList.builder();
    for (WorkEvent.Cleaned done : history.events(WorkEvent.Cleaned.class)) {
      // A wash of which no particulars are known departed from no limit that another spares it.
      if (done.wash().isPresent()) {
        Validity.loosened(done, wash(done)).forEach(loosened::add);
      }
    }
    return loosened.build();
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
   * Lists what took the element out of service and was not undone. Only a return that counts, and
   * came certainly later, undoes it.
   *
   * @return the events that took it out, or may have by the day, in the order of the history
   */
  public List<UseEvent.TakenOut> outOfService() {
    List<UseEvent.TakenOut> taken = history.events(UseEvent.TakenOut.class);
    if (taken.isEmpty()) {
      return taken;
    }
    Optional<Moment> back =
        counting(UseEvent.BackInService.class).stream().map(Event::when).max(Moment.LAST_CERTAIN);
    return taken.stream()
        .filter(out -> out.when().date().possiblyBy(asOf))
        .filter(out -> !back.map(when -> when.certainlyAfter(out.when())).orElse(false))
        .collect(ImmutableList.toImmutableList());
  }

  /**
   * Lists what took the element out of the department's hands and is not certainly over: loans,
   * jobs at a provider, losses and thefts.
   *
   * @return the transfers by which it went, or may have by the day, in the order of the history
   */
  public List<UseEvent.Moved> away() {
    ImmutableList.Builder<UseEvent.Moved> away = ImmutableList.builder();
    for (UseEvent.Moved gone : history.events(UseEvent.Moved.class)) {
      if (gone.when().date().possiblyBy(asOf)
          && gone.transfer().endedBy().filter(ends -> !endedAfter(ends, gone)).isPresent()) {
        away.add(gone);
      }
    }
    return away.build();
  }

  private boolean endedAfter(Transfer ends, UseEvent.Moved gone) {
    return history.events(UseEvent.Moved.class).stream()
        .filter(back -> back.transfer() == ends && back.when().date().certainlyBy(asOf))
        .anyMatch(back -> back.when().certainlyAfter(gone.when()));
  }

  /**
   * Lists with what the element came back from others' hands and was not inspected since as {@link
   * ReturnTable} asks. Such an inspection counts, and came certainly later, or on the same day and
   * says that the return was its occasion, if that day had no other.
   *
   * @return the returns, or what may have been one by the day, in the order of the history, once
   *     for each row that asks, and once where none does
   */
  public List<UnseenReturn> unseenReturns() {
    ImmutableList.Builder<UnseenReturn> unseen = ImmutableList.builder();
    for (UseEvent.Moved back : history.events(UseEvent.Moved.class)) {
      if (back.transfer().comesBack() && back.when().date().possiblyBy(asOf)) {
        for (Optional<ReturnRow> row : asked(back.transfer())) {
          if (row.filter(asked -> inspectedAfter(asked, back)).isEmpty()) {
            unseen.add(new UnseenReturn(back, row));
          }
        }
      }
    }
    return unseen.build();
  }

  /**
   * Lists what is asked of the element once it is back from others' hands.
   *
   * @param back the transfer with which it comes; not null
   * @return each row that asks something; empty in place of one where no rule covers it
   */
  public List<Optional<ReturnRow>> asked(Transfer back) {
    List<ReturnRow> rows = tables.returns().rows(back);
    return rows.isEmpty()
        ? ImmutableList.of(Optional.empty())
        : rows.stream().map(Optional::of).collect(ImmutableList.toImmutableList());
  }

  private boolean inspectedAfter(ReturnRow asked, UseEvent.Moved back) {
    return counting(LookEvent.Inspected.class).stream()
        .filter(asked::asksFor)
        .anyMatch(done -> done.when().follows(back.when(), names(done.inspection(), back)));
  }

  private boolean names(Inspection made, UseEvent.Moved back) {
    return made.occasion() == Occasion.AFTER_RETURN && namesOne(Occasion.AFTER_RETURN, back.when());
  }

  /**
   * Tells whether an inspection that names its occasion says by it that it came after what was at a
   * moment. A use and what the element met are one sort; where two of a sort may have been on one
   * day, only their order tells which of them the inspection came after.
   *
   * @param occasion the occasion; not null
   * @param moment when that was of which it may be the occasion; not null
   * @return true if nothing else of its sort may have been on its day; of an occasion that names no
   *     such thing, or all work of its day, always
   */
  public boolean namesOne(Occasion occasion, Moment moment) {
    return switch (occasion) {
      case AFTER_USE -> uses.get().alone(moment);
      case AFTER_RETURN -> returns.get().alone(moment);
      default -> true;
    };
  }

  private OneADay ofItsDay(Occasion occasion) {
    return new OneADay(history, StatedOrder.stated(occasion).orElseThrow());
  }

  /**
   * Tells what settled a finding, if the element was not inspected since. Whatever settles it, an
   * inspection that counts follows: one that is certainly later, or of the same day and says that
   * the work was its occasion, or is the very check that was passed.
   *
   * @param finding the finding; not null
   * @return what was done, when and by whom, in words, once for each demand that it settles and
   *     that no inspection has followed; never null
   */
  public List<String> settledUnseen(Finding finding) {
    return open.get().settledUnseen(finding);
  }

  /**
   * Tells whether layers were cleaned in one way, so that it counts, certainly after a moment, and
   * the element was inspected since, so that it counts: certainly later than that cleaning, or on
   * its day with the work as its occasion.
   *
   * @param kind the kind of cleaning; not null
   * @param layers the layers, as in {@link #cleanedAfter}; not null
   * @param moment the moment; not null
   * @return true if all of them were
   */
  public boolean cleanedAndSeenAfter(CleaningKind kind, Set<LayerKind> layers, Moment moment) {
    return latest.cleanedAndSeenAfter(kind, layers, moment);
  }

  /**
   * Says how the record may tell that something of a sort came after a moment, where it may have.
   *
   * @param moment the moment; not null
   * @param sort which events; not null
   * @return a text that begins with a semicolon; empty if nothing of the sort counts and is of that
   *     very day without an order told
   */
  public String howToOrder(Moment moment, Predicate<Event> sort) {
    return howToOrder(moment, sort, event -> "");
  }

  /**
   * Says how the record may tell that something of a sort came after a moment, where it may have:
   * by an order, or by a statement that such an event can make.
   *
   * @param moment the moment; not null
   * @param sort which events; not null
   * @param statement what else an event may state, in words that go on; empty if nothing; not null
   * @return a text that begins with a semicolon; empty if nothing of the sort counts and is of that
   *     very day without an order told
   */
  public String howToOrder(
      Moment moment, Predicate<Event> sort, Function<Event, String> statement) {
    return moment
        .date()
        .earliest()
        .map(day -> byDay.get().get(day).stream())
        .orElseGet(Stream::empty)
        .filter(event -> sort.test(event) && maySay(event))
        .flatMap(
            event ->
                event
                    .when()
                    .howToOrder(moment)
                    .map(how -> event.name() + " " + how + statement.apply(event))
                    .stream())
        .findFirst()
        .map(text -> "; " + text)
        .orElse("");
  }

  /** What is not judged, as a transfer, counts as it stands. */
  private boolean maySay(Event event) {
    return judgment(event).map(Judgment::counts).orElse(true);
  }

  /**
   * Says how the record may tell that another inspection of its day makes good one that does not
   * count.
   *
   * @param begun the inspection that does not count; not null
   * @return a text that begins with a semicolon; empty if none of that day would
   */
  public String howToOrder(LookEvent.Inspected begun) {
    InspectionKind asked = askedFor(begun);
    return howToOrder(
        begun.when(),
        other ->
            other instanceof LookEvent.Inspected done
                && tables
                    .criteria()
                    .covers(done.inspection().kind(), asked, element.kind(), element.use()));
  }

  private ImmutableListMultimap<LocalDate, Event> eventsByDay() {
    return history.events().stream()
        .filter(event -> event.when().date() instanceof MarkedDate.Day)
        .collect(
            ImmutableListMultimap.toImmutableListMultimap(
                event -> event.when().date().earliest().orElseThrow(), event -> event));
  }

  /**
   * Lists what is still open among the findings of the history, those that its checks and washes
   * themselves show included.
   *
   * @return the open findings in the order of the history, once for each open demand; acceptable
   *     ones are not open
   */
  public List<OpenFinding> openFindings() {
    return open.get().ofHistory();
  }

  /**
   * Returns a finding as it stands by what was tried for it. A place that nobody had tried when it
   * was found is one that held once the strength check that its row calls for is passed for it, so
   * that it counts and no failure of it stands; what is settled as it was found stays so.
   *
   * @param finding the finding; not null
   * @return the finding, as seen at that pass with the grade that it shows; else as it was given
   */
  public Finding asTried(Finding finding) {
    return open.get().asTried(finding);
  }

  /**
   * Lists what is still open of one finding.
   *
   * @param finding the finding; not null
   * @return the finding once for each open demand; empty if it is settled or acceptable
   */
  public List<OpenFinding> open(Finding finding) {
    return open.get().of(finding);
  }

  /**
   * Lists the decisions of inspectors that still bind: for which what was decided is not done
   * since, by somebody who may, and named as done for them.
   *
   * @return the decisions in the order of the history; never null
   */
  public List<OpenDecision> decisions() {
    return open.get().decisions();
  }

  /**
   * Lists the failed checks that nothing has settled since. A check that failed stands until,
   * certainly later, an expert's evaluation or a check that outranks it is passed for it, or a
   * repair made for it is followed by a pass of the same check for it: each names the failure
   * itself, as {@link LookEvent.Checked#failure} has it. A mere repeat settles nothing. Findings
   * that a failed check names don't tell that it was made for no others.
   *
   * @return the failed checks in the order of the history; never null
   */
  public List<LookEvent.Checked> standingFailures() {
    return open.get().standingFailures();
  }
}
