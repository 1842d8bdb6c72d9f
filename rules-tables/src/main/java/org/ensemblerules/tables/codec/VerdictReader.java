package org.ensemblerules.tables.codec;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.InspectionOnRecord;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.ruleset.Identity;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.CitedRow;
import org.ensemblerules.source.RowKey;
import org.ensemblerules.tables.json.JsonCursor;
import org.ensemblerules.tables.json.JsonLimits;
import org.ensemblerules.tables.json.JsonReader;
import org.ensemblerules.tables.json.ObjectCursor;
import org.ensemblerules.tables.json.UnknownFields;
import org.ensemblerules.tables.json.ValueReaders;
import org.ensemblerules.verdict.Action;
import org.ensemblerules.verdict.AuthorityDecision;
import org.ensemblerules.verdict.Caution;
import org.ensemblerules.verdict.LayerAge;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.StillOpen;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;

/**
 * Reads verdicts as they were written. What follows from other fields must be what follows: a text
 * that says IN above a reason that keeps it out is refused.
 */
public final class VerdictReader {
  private enum Way {
    NOT_NEEDED,
    NONE,
    STEPS
  }

  private VerdictReader() {}

  /** Makes a reader of texts of at most a number of characters. */
  public static JsonReader reader(int longest) {
    return new JsonReader(JsonLimits.ofDocument(longest), UnknownFields.REFUSED);
  }

  /** Reads a verdict; a trace and words in it are looked at as strictly, and not kept. */
  public static Optional<Verdict> read(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<NamedElement> element = object.required("element", ElementJson::named);
    Optional<LocalDate> asOf = object.required("asOf", DayJson::read);
    Optional<List<Action>> actions =
        object.required("actions", list -> list.list(VerdictReader::action));
    Optional<List<Reason>> reasons =
        object.required("reasons", list -> list.list(VerdictReader::reason));
    Optional<List<StillOpen>> open =
        object.required("openFindings", list -> list.list(VerdictReader::open));
    Optional<WayBack> wayBack = object.required("wayBack", VerdictReader::wayBack);
    Optional<List<LayerAge>> ages =
        object.required("ages", list -> list.list(age -> AgeJson.read(age, element)));
    Optional<List<InspectionOnRecord>> inspections =
        object.optional("inspections", list -> list.list(VerdictReader::inspection));
    Optional<List<TaskDue>> due = object.required("due", list -> list.list(VerdictReader::due));
    Optional<List<AuthorityDecision>> authority =
        object.optional("authority", list -> list.list(VerdictReader::authority));
    Optional<List<Caution>> cautions =
        object.required("cautions", list -> list.list(VerdictReader::caution));
    Optional<Identity> identity = object.required("rules", IdentityJson::read);
    object.optional("trace", list -> list.list(RowJson::readName));
    object.optional("words", SentencesTree::lookAt);
    object.optional("goesTo", EffectJson::goesTo);
    List.of("service", "headline", "outBecause", "handling", "checksNotDone")
        .forEach(field -> object.required(field, Optional::of));
    return object
        .make(
            () ->
                Verdict.builder(element.orElseThrow(), asOf.orElseThrow(), identity.orElseThrow())
                    .actions(actions.orElseThrow())
                    .reasons(reasons.orElseThrow())
                    .openFindings(open.orElseThrow())
                    .wayBack(wayBack.orElseThrow())
                    .ages(ages.orElseThrow())
                    .inspections(inspections.orElse(List.of()))
                    .due(due.orElseThrow())
                    .authority(authority.orElse(List.of()))
                    .cautions(cautions.orElseThrow())
                    .build())
        .flatMap(verdict -> agreed(object, verdict));
  }

  private static Optional<Verdict> agreed(ObjectCursor object, Verdict verdict) {
    Derived.text(object, "service", Optional.of(verdict.service().name()));
    Derived.text(object, "headline", Optional.of(verdict.headline().name()));
    Derived.optional(object, "goesTo", EffectJson::goesTo, verdict.goesTo());
    Derived.names(object, "outBecause", verdict.outBecause().stream().map(Enum::name).toList());
    Derived.names(object, "handling", verdict.handling().stream().map(Enum::name).toList());
    Derived.names(
        object, "checksNotDone", verdict.checksNotDone().stream().map(RowKey::value).toList());
    return object.make(() -> verdict);
  }

  /** Reads what must be done. */
  public static Optional<Action> action(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Effect> effect = object.required("effect", EffectJson::read);
    Optional<Site> target = object.required("target", ValueReaders::site);
    Optional<List<PermittedDoer>> by = by(object);
    Optional<GoesTo> goesTo = object.required("goesTo", EffectJson::goesTo);
    Optional<List<Check>> afterward = object.required("afterward", VerdictReader::checks);
    return object.make(
        () ->
            new Action(
                effect.orElseThrow(),
                target.orElseThrow(),
                by.orElseThrow(),
                goesTo.orElseThrow(),
                Set.copyOf(afterward.orElseThrow())));
  }

  private static Optional<List<PermittedDoer>> by(ObjectCursor object) {
    return object.required("by", list -> list.list(EffectJson::doer));
  }

  private static Optional<List<Check>> checks(JsonCursor at) {
    return at.distinctOrNone(value -> value.enumOf(Check.class));
  }

  private static Optional<List<String>> words(JsonCursor at) {
    return at.list(JsonCursor::text);
  }

  private static Optional<Reason> reason(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<ReasonKind> kind = object.required("kind", value -> value.enumOf(ReasonKind.class));
    Optional<Site> site = object.required("site", ValueReaders::site);
    Optional<FindingId> finding = object.optional("finding", FindingJson::id);
    Optional<String> seen = object.required("seen", JsonCursor::text);
    Optional<Effect> effect = object.required("effect", EffectJson::read);
    Optional<CitedRow> row = object.optional("row", RowJson::read);
    Optional<Set<HandlingDuty>> handling =
        object.optional("handling", list -> list.setOf(HandlingDuty.class));
    Optional<Set<Check>> afterward = object.optional("afterward", list -> list.setOf(Check.class));
    Optional<List<String>> attempts = object.optional("attempts", VerdictReader::words);
    object.optional("caution", JsonCursor::text);
    Optional<Reason> reason =
        object.make(
            () ->
                new Reason(
                    kind.orElseThrow(),
                    row,
                    site.orElseThrow(),
                    finding,
                    seen.orElseThrow(),
                    effect.orElseThrow(),
                    handling.orElse(EnumSet.noneOf(HandlingDuty.class)),
                    afterward.orElse(EnumSet.noneOf(Check.class)),
                    attempts.orElse(List.of())));
    return reason.flatMap(
        made -> {
          Derived.optionalText(object, "caution", made.caution());
          return object.make(() -> made);
        });
  }

  private static Optional<StillOpen> open(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Finding> finding = object.required("finding", FindingJson::read);
    Optional<Site> site = object.required("site", ValueReaders::site);
    Optional<Effect> effect = object.required("effect", EffectJson::read);
    Optional<List<String>> closedBy = object.required("closedBy", VerdictReader::words);
    Optional<List<String>> attempts = object.required("attempts", VerdictReader::words);
    return object.make(
        () ->
            new StillOpen(
                finding.orElseThrow(),
                site.orElseThrow(),
                effect.orElseThrow(),
                closedBy.orElseThrow(),
                attempts.orElseThrow()));
  }

  private static Optional<WayBack> wayBack(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Way> kind = object.required("kind", value -> value.enumOf(Way.class));
    if (kind.isEmpty()) {
      return Optional.empty();
    }
    return switch (kind.get()) {
      case NOT_NEEDED -> object.make(WayBack.NotNeeded::new);
      case NONE -> {
        Optional<String> why = object.required("why", JsonCursor::text);
        yield object.make(() -> new WayBack.None(why.orElseThrow()));
      }
      case STEPS -> {
        Optional<List<Step>> steps =
            object.required("steps", list -> list.list(VerdictReader::step));
        yield object.make(() -> new WayBack.Steps(steps.orElseThrow()));
      }
    };
  }

  private static Optional<Step> step(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<Effect> effect = object.required("effect", EffectJson::read);
    Optional<Site> target = object.required("target", ValueReaders::site);
    Optional<List<PermittedDoer>> by = by(object);
    Optional<GoesTo> goesTo = object.required("goesTo", EffectJson::goesTo);
    Optional<List<String>> shown = object.required("shown", VerdictReader::words);
    return object.make(
        () ->
            new Step(
                effect.orElseThrow(),
                target.orElseThrow(),
                by.orElseThrow(),
                goesTo.orElseThrow(),
                shown.orElseThrow()));
  }

  /** Reads what is due. */
  public static Optional<TaskDue> due(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<TaskKey> task = object.required("task", value -> value.parsed(TaskKey::new));
    Optional<LayerKind> layer = object.optional("layer", value -> value.enumOf(LayerKind.class));
    Optional<LocalDate> by = object.optional("by", DayJson::read);
    Optional<String> why = object.required("why", JsonCursor::text);
    Optional<CitedRow> row = object.optional("row", RowJson::read);
    Optional<EvidenceGrade> grade =
        object.optional("grade", value -> value.enumOf(EvidenceGrade.class));
    Optional<LocalDate> byDateOnly = object.optional("byDateOnly", DayJson::read);
    return object.make(
        () ->
            new TaskDue(task.orElseThrow(), layer, by, why.orElseThrow(), row, grade, byDateOnly));
  }

  private static Optional<InspectionOnRecord> inspection(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<InspectionKind> kind =
        object.required("kind", value -> value.enumOf(InspectionKind.class));
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<String> by = object.optional("by", JsonCursor::text);
    Optional<EvidenceGrade> grade =
        object.required("grade", value -> value.enumOf(EvidenceGrade.class));
    Optional<Boolean> counts = object.required("counts", JsonCursor::bool);
    Optional<List<RowKey>> left =
        object.optional("left", value -> value.distinct(entry -> entry.parsed(RowKey::new)));
    Optional<Set<Equipment>> toBring =
        object.optional("toBring", value -> value.setOf(Equipment.class));
    return object.make(
        () ->
            new InspectionOnRecord(
                kind.orElseThrow(),
                on.orElseThrow(),
                by,
                grade.orElseThrow(),
                counts.orElseThrow(),
                left.orElse(List.of()),
                toBring.orElse(Set.of())));
  }

  private static Optional<AuthorityDecision> authority(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<MarkedDate> on = object.required("on", ValueReaders::markedDate);
    Optional<String> authority = object.required("authority", JsonCursor::text);
    Optional<String> decision = object.required("decision", JsonCursor::text);
    Optional<String> why = object.required("why", JsonCursor::text);
    return object.make(
        () ->
            new AuthorityDecision(
                on.orElseThrow(),
                authority.orElseThrow(),
                decision.orElseThrow(),
                why.orElseThrow()));
  }

  private static Optional<Caution> caution(JsonCursor at) {
    ObjectCursor object = at.object();
    Optional<RowKey> row = object.required("row", RowJson::key);
    Optional<String> text = object.required("text", JsonCursor::text);
    return object.make(() -> new Caution(row.orElseThrow(), text.orElseThrow()));
  }
}
