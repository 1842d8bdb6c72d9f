package org.ensemblerules.assess;

import com.google.common.collect.Lists;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.ExposureEvent;
import org.ensemblerules.history.LookEvent;
import org.ensemblerules.history.UseEvent;
import org.ensemblerules.history.WorkEvent;
import org.ensemblerules.source.Edition;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;

/** Does the record contradict itself, the calendar or the kind of element? Has service ended? */
final class RecordQuestion {
  private static final Effect PUT_RIGHT =
      new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT);

  private RecordQuestion() {}

  static void ask(CaseFile file, Consumer<Reason> reasons) {
    editions(file, reasons);
    endOfService(file, reasons);
    kindAndLayers(file, reasons);
    dates(file, reasons);
    orderOfLife(file, reasons);
    contradictions(file, reasons);
    identified(file, reasons);
    outOfService(file, reasons);
    alterations(file, reasons);
    findingIds(file, reasons);
  }

  private static void editions(CaseFile file, Consumer<Reason> reasons) {
    for (Edition edition : file.rules().editions().values()) {
      if (isBefore(file.asOf(), edition.effective())) {
        String since = edition.id() + " took effect " + edition.effective().orElseThrow();
        reasons.accept(notInForce(file, since));
      }
      if (isBefore(file.asOf(), edition.notBefore())) {
        String since =
            "the day "
                + edition.id()
                + " took effect is not known, and is not before "
                + edition.notBefore().orElseThrow();
        reasons.accept(notInForce(file, since));
      }
    }
  }

  private static boolean isBefore(LocalDate asOf, Optional<LocalDate> first) {
    return first.isPresent() && asOf.isBefore(first.get());
  }

  private static Reason notInForce(CaseFile file, String since) {
    return reason(
        ReasonKind.EDITION_NOT_IN_FORCE, "asOf is " + file.asOf() + "; " + since, PUT_RIGHT);
  }

  private static void endOfService(CaseFile file, Consumer<Reason> reasons) {
    for (EndEvent.Retired retired : file.history().events(EndEvent.Retired.class)) {
      ended(file, retired, "retired: " + retired.why(), reasons);
    }
    for (EndEvent.Disposed disposed : file.history().events(EndEvent.Disposed.class)) {
      ended(file, disposed, "disposed of", reasons);
    }
  }

  private static void ended(CaseFile file, Event event, String what, Consumer<Reason> reasons) {
    if (event.when().date().possiblyBy(file.asOf())) {
      reasons.accept(
          reason(
              ReasonKind.LEFT_SERVICE,
              what + ", " + event.when(),
              new Effect.Retire(Scope.ELEMENT)));
    }
  }

  private static void kindAndLayers(CaseFile file, Consumer<Reason> reasons) {
    if (file.tables().anatomy().of(file.element().kind(), file.element().use()).isEmpty()) {
      contradiction("element", kind(file), "a kind of element that exists for that use", reasons);
      return;
    }
    for (LayerKind layer : file.element().layerLabels().keySet()) {
      labelSite(file, Site.of(Part.LABEL, layer), reasons);
    }
    if (file.element().label().isPresent()) {
      labelSite(file, Site.of(Part.LABEL), reasons);
    }
  }

  private static String kind(CaseFile file) {
    return file.element().kind() + " " + file.element().use();
  }

  private static void labelSite(CaseFile file, Site site, Consumer<Reason> reasons) {
    if (file.tables().anatomy().at(file.element().kind(), file.element().use(), site).isEmpty()) {
      contradiction(
          "element.labels",
          site + " on " + kind(file),
          "a label that such an element has",
          reasons);
    }
  }

  private static void dates(CaseFile file, Consumer<Reason> reasons) {
    // A history is in the order of the earliest days that its events can have.
    for (Event event : Lists.reverse(file.history().events())) {
      if (event.when().date().possiblyBy(file.asOf())) {
        break;
      }
      tooLate(file, "history " + event.name(), event.when(), reasons);
    }
    for (Doer doer : file.history().vouchedFor()) {
      doer.credentials().stream()
          .flatMap(credential -> credential.vouched().stream())
          .filter(word -> word.on().isAfter(file.asOf()))
          .distinct()
          .forEach(word -> tooLate(file, "doer " + doer.name() + ", vouched for", word, reasons));
    }
    for (Finding finding : file.findings()) {
      if (!finding.seen().possiblyBy(file.asOf())) {
        tooLate(file, "finding " + finding.id(), finding.seen(), reasons);
      }
    }
    if (!file.element().inService().possiblyBy(file.asOf())) {
      tooLate(file, "element.inService", file.element().inService(), reasons);
    }
    for (MarkedDate made : file.labeled().manufactured()) {
      if (!made.possiblyBy(file.asOf())) {
        tooLate(file, "label.manufactured", made, reasons);
      }
    }
  }

  private static void tooLate(CaseFile file, String field, Object found, Consumer<Reason> reasons) {
    contradiction(field, found.toString(), "a date not after " + file.asOf(), reasons);
  }

  /** Nothing can happen to an element before its first part was made. */
  private static void orderOfLife(CaseFile file, Consumer<Reason> reasons) {
    Optional<LocalDate> first = MarkedDate.earliestOf(file.labeled().manufactured());
    if (first.isEmpty()) {
      return;
    }
    LocalDate dayBefore = first.get().minusDays(1);
    if (file.element().inService().certainlyBy(dayBefore)) {
      beforeMade("element.inService", file.element().inService(), first.get(), reasons);
    }
    for (Finding finding : file.assessment().findings()) {
      if (finding.seen().certainlyBy(dayBefore)) {
        beforeMade("finding " + finding.id(), finding.seen(), first.get(), reasons);
      }
    }
  }

  private static void beforeMade(
      String field, MarkedDate found, LocalDate made, Consumer<Reason> reasons) {
    contradiction(field, found.toString(), "a date not before its manufacture, " + made, reasons);
  }

  private static void contradictions(CaseFile file, Consumer<Reason> reasons) {
    for (Contradiction fault : file.history().contradictions(file.labeled().manufactured())) {
      contradiction(fault.field(), fault.found(), fault.allowed(), reasons);
    }
  }

  /** Whatever became known is of something on record, else it may be of something left out. */
  private static void identified(CaseFile file, Consumer<Reason> reasons) {
    List<ExposureEvent.Exposed> met = file.history().events(ExposureEvent.Exposed.class);
    for (ExposureEvent.ExposureIdentified event :
        file.history().events(ExposureEvent.ExposureIdentified.class)) {
      if (met.stream().noneMatch(each -> each.when().equals(event.met()))) {
        contradiction(
            "history " + event.name(),
            "met " + event.met(),
            "when the element met something, as an exposure on record has it",
            reasons);
      }
    }
  }

  private static void outOfService(CaseFile file, Consumer<Reason> reasons) {
    for (UseEvent.TakenOut taken : file.evidence().absence().outOfService()) {
      reasons.accept(
          reason(
              ReasonKind.OUT_OF_SERVICE,
              "taken out of service "
                  + taken.when()
                  + ": "
                  + taken.why()
                  + "; not certainly back since"
                  + file.evidence()
                      .order()
                      .howToTell(taken.when(), UseEvent.BackInService.class::isInstance),
              new Effect.Evaluate(Check.RETURN_TO_SERVICE, Scope.ELEMENT)));
    }
  }

  /** An alteration that the manufacturer is not known to have approved, and nobody looked at. */
  private static void alterations(CaseFile file, Consumer<Reason> reasons) {
    for (WorkEvent.Modified altered : file.history().events(WorkEvent.Modified.class)) {
      if (altered.approved() != YesNoUnknown.YES
          && !file.evidence().done().passedAfter(Check.EXPERT_EVALUATION, altered.when())) {
        reasons.accept(
            reason(
                ReasonKind.ALTERED,
                "altered "
                    + altered.when()
                    + ": "
                    + altered.what()
                    + "; approved by the manufacturer: "
                    + altered.approved()
                    + file.evidence()
                        .order()
                        .howToTell(
                            altered.when(),
                            event ->
                                event instanceof LookEvent.Checked done
                                    && done.check() == Check.EXPERT_EVALUATION),
                new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT)));
      }
    }
  }

  private static void findingIds(CaseFile file, Consumer<Reason> reasons) {
    List<Finding> findings = file.findings();
    if (findings.size() < 2) {
      return;
    }
    Map<FindingId, Finding> byId = new HashMap<>();
    for (Finding finding : findings) {
      Finding other = byId.putIfAbsent(finding.id(), finding);
      if (other != null && !other.equals(finding)) {
        contradiction("finding " + finding.id(), "two different findings", "each id once", reasons);
      }
    }
  }

  private static void contradiction(
      String field, String found, String allowed, Consumer<Reason> reasons) {
    reasons.accept(
        reason(
            ReasonKind.CONTRADICTION,
            field + ": found " + found + ", allowed: " + allowed,
            PUT_RIGHT));
  }

  private static Reason reason(ReasonKind kind, String seen, Effect effect) {
    return Reasons.of(
        kind,
        Optional.empty(),
        Site.of(Part.WHOLE_ELEMENT),
        Optional.empty(),
        seen,
        effect,
        List.of());
  }
}
