package org.ensemblerules.verdict;

import java.time.LocalDate;
import java.util.Comparator;
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
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.history.Contradictions;
import org.ensemblerules.history.Event;
import org.ensemblerules.source.Edition;

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
      edition
          .effective()
          .filter(effective -> file.asOf().isBefore(effective))
          .ifPresent(
              effective ->
                  reasons.accept(
                      reason(
                          ReasonKind.EDITION_NOT_IN_FORCE,
                          "asOf is "
                              + file.asOf()
                              + "; "
                              + edition.id()
                              + " took effect "
                              + effective,
                          PUT_RIGHT)));
      edition
          .notBefore()
          .filter(first -> file.asOf().isBefore(first))
          .ifPresent(
              first ->
                  reasons.accept(
                      reason(
                          ReasonKind.EDITION_NOT_IN_FORCE,
                          "asOf is "
                              + file.asOf()
                              + "; the day "
                              + edition.id()
                              + " took effect is not known, and is not before "
                              + first,
                          PUT_RIGHT)));
    }
  }

  private static void endOfService(CaseFile file, Consumer<Reason> reasons) {
    for (Event event : file.history().events()) {
      boolean ended = event instanceof Event.Retired || event instanceof Event.Disposed;
      if (ended && event.when().date().possiblyBy(file.asOf())) {
        String what =
            event instanceof Event.Retired retired ? "retired: " + retired.why() : "disposed of";
        reasons.accept(
            reason(
                ReasonKind.LEFT_SERVICE,
                what + ", " + event.when(),
                new Effect.Retire(Scope.ELEMENT)));
      }
    }
  }

  private static void kindAndLayers(CaseFile file, Consumer<Reason> reasons) {
    String kind = file.element().kind() + " " + file.element().use();
    if (file.tables().anatomy().of(file.element().kind(), file.element().use()).isEmpty()) {
      contradiction("element", kind, "a kind of element that exists for that use", reasons);
      return;
    }
    file.element()
        .layerLabels()
        .keySet()
        .forEach(layer -> labelSite(file, Site.of(Part.LABEL, layer), kind, reasons));
    file.element().label().ifPresent(label -> labelSite(file, Site.of(Part.LABEL), kind, reasons));
  }

  private static void labelSite(CaseFile file, Site site, String kind, Consumer<Reason> reasons) {
    if (file.tables().anatomy().at(file.element().kind(), file.element().use(), site).isEmpty()) {
      contradiction(
          "element.labels", site + " on " + kind, "a label that such an element has", reasons);
    }
  }

  private static void dates(CaseFile file, Consumer<Reason> reasons) {
    String allowed = "a date not after " + file.asOf();
    for (Event event : file.history().events()) {
      if (!event.when().date().possiblyBy(file.asOf())) {
        contradiction("history " + event.name(), event.when().toString(), allowed, reasons);
      }
    }
    for (Doer doer : file.vouchedFor()) {
      doer.credentials().stream()
          .flatMap(credential -> credential.vouched().stream())
          .filter(word -> word.on().isAfter(file.asOf()))
          .distinct()
          .forEach(
              word ->
                  contradiction(
                      "doer " + doer.name() + ", vouched for", word.toString(), allowed, reasons));
    }
    for (Finding finding : file.findings()) {
      if (!finding.seen().possiblyBy(file.asOf())) {
        contradiction("finding " + finding.id(), finding.seen().toString(), allowed, reasons);
      }
    }
    if (!file.element().inService().possiblyBy(file.asOf())) {
      contradiction("element.inService", file.element().inService().toString(), allowed, reasons);
    }
    for (MarkedDate made : file.labeled().manufactured()) {
      if (!made.possiblyBy(file.asOf())) {
        contradiction("label.manufactured", made.toString(), allowed, reasons);
      }
    }
  }

  /** Nothing can happen to an element before its first part was made. */
  private static void orderOfLife(CaseFile file, Consumer<Reason> reasons) {
    List<MarkedDate> made = file.labeled().manufactured();
    Optional<LocalDate> first =
        made.stream().flatMap(date -> date.earliest().stream()).min(Comparator.naturalOrder());
    if (first.isEmpty()) {
      return;
    }
    String allowed = "a date not before its manufacture, " + first.get();
    LocalDate dayBefore = first.get().minusDays(1);
    if (file.element().inService().certainlyBy(dayBefore)) {
      contradiction("element.inService", file.element().inService().toString(), allowed, reasons);
    }
    for (Finding finding : file.assessment().findings()) {
      if (finding.seen().certainlyBy(dayBefore)) {
        contradiction("finding " + finding.id(), finding.seen().toString(), allowed, reasons);
      }
    }
  }

  private static void contradictions(CaseFile file, Consumer<Reason> reasons) {
    for (Contradiction fault : Contradictions.in(file.history(), file.labeled().manufactured())) {
      contradiction(fault.field(), fault.found(), fault.allowed(), reasons);
    }
  }

  /** Whatever became known is of something on record, else it may be of something left out. */
  private static void identified(CaseFile file, Consumer<Reason> reasons) {
    List<Event.Exposed> met = file.history().events(Event.Exposed.class);
    for (Event.ExposureIdentified event : file.history().events(Event.ExposureIdentified.class)) {
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
    for (Event.TakenOut taken : file.evidence().outOfService()) {
      reasons.accept(
          reason(
              ReasonKind.OUT_OF_SERVICE,
              "taken out of service "
                  + taken.when()
                  + ": "
                  + taken.why()
                  + "; not certainly back since"
                  + file.evidence().howToOrder(taken.when(), Event.BackInService.class::isInstance),
              new Effect.Evaluate(Check.RETURN_TO_SERVICE, Scope.ELEMENT)));
    }
  }

  /** An alteration that the manufacturer is not known to have approved, and nobody looked at. */
  private static void alterations(CaseFile file, Consumer<Reason> reasons) {
    for (Event.Modified altered : file.history().events(Event.Modified.class)) {
      if (altered.approved() != YesNoUnknown.YES
          && !file.evidence().passedAfter(Check.EXPERT_EVALUATION, altered.when())) {
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
                        .howToOrder(
                            altered.when(),
                            event ->
                                event instanceof Event.Checked done
                                    && done.check() == Check.EXPERT_EVALUATION),
                new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.ELEMENT)));
      }
    }
  }

  private static void findingIds(CaseFile file, Consumer<Reason> reasons) {
    Map<FindingId, Finding> byId = new HashMap<>();
    for (Finding finding : file.findings()) {
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
    return new Reason(
        kind,
        Optional.empty(),
        Site.of(Part.WHOLE_ELEMENT),
        Optional.empty(),
        seen,
        effect,
        List.of());
  }
}
