package org.ensemblerules.defect;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.gear.AnatomyTable;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Site;

/**
 * What one finding calls for at one site. A finding whose layer nobody has named calls for what
 * each possible layer calls for.
 *
 * @param kind how the demand arises; not null
 * @param site where; not null
 * @param row the row that covers it; present for {@link Kind#RULE}, and for {@link
 *     Kind#MUST_MEASURE} if a row that stands beside the table asks for it
 * @param effect what it calls for; not null
 * @param mustMeasure by what the extent must be measured: present for {@link Kind#MUST_MEASURE},
 *     and where a size was told that no row covers, so that the strictest row short of retirement
 *     is taken
 * @since 0.1
 */
public record Demand(
    Kind kind,
    Site site,
    Optional<DefectRow> row,
    Effect effect,
    Optional<ExtentKind> mustMeasure) {

  /** How a demand arises. */
  public enum Kind {
    /** A row covers the finding. */
    RULE,
    /** The extent must be measured before a row can be chosen. */
    MUST_MEASURE,
    /** No row covers it. */
    NO_RULE,
    /** Such an element has no such part. */
    NO_SUCH_PART
  }

  /** Checks for nulls. */
  public Demand {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(site, "site");
    Objects.requireNonNull(row, "row");
    Objects.requireNonNull(effect, "effect");
    Objects.requireNonNull(mustMeasure, "mustMeasure");
  }

  /**
   * Tells whether it is the demand of a place that nobody has tried, so that the strength check
   * comes first.
   *
   * @param finding the finding whose demand it is; not null
   * @return true if the finding is graded so, and the row that covers it is for such places
   */
  public boolean isOfUntried(Finding finding) {
    return finding.oncePassed(finding.seen()).isPresent()
        && row.filter(DefectRow::isOfUntried).isPresent();
  }

  /**
   * Asks the tables what a finding calls for.
   *
   * @param finding the finding; not null
   * @param element the element it was found on; not null
   * @param anatomy which parts exist; not null
   * @param defects what defects call for; not null
   * @return at least one demand: for each site that the finding can mean the table's own, unless it
   *     is open and a row beside the table answers it, and one for each row beside the table that
   *     applies or may apply
   */
  public static List<Demand> of(
      Finding finding, Element element, AnatomyTable anatomy, DefectTable defects) {
    List<Site> sites = anatomy.meant(element.kind(), element.use(), finding.site());
    if (sites.isEmpty()) {
      return List.of(
          new Demand(
              Kind.NO_SUCH_PART,
              finding.site(),
              Optional.empty(),
              new Effect.Evaluate(Check.RECORD_CORRECTION, Scope.ELEMENT),
              Optional.empty()));
    }
    return sites.stream()
        .flatMap(
            site -> {
              List<DefectRow> beside =
                  defects.beside(element.kind(), element.use(), site, finding.defect());
              return Stream.concat(
                  Stream.of(at(site, finding, element, defects))
                      .filter(own -> !isAnswered(own, beside)),
                  beside.stream().flatMap(row -> beside(row, site, finding).stream()));
            })
        .collect(ImmutableList.toImmutableList());
  }

  /** An answer that an open row admits stands in its place; nothing else takes a demand away. */
  private static boolean isAnswered(Demand own, List<DefectRow> beside) {
    return own.row().filter(row -> beside.stream().anyMatch(row::isAnsweredBy)).isPresent();
  }

  private static Optional<Demand> beside(DefectRow row, Site site, Finding finding) {
    if (row.band().holds(finding.extent())) {
      return Optional.of(
          new Demand(Kind.RULE, site, Optional.of(row), row.effect(), Optional.empty()));
    }
    return row.band().excludes(finding.extent())
        ? Optional.empty()
        : Optional.of(
            new Demand(
                Kind.MUST_MEASURE,
                site,
                Optional.of(row),
                new Effect.Evaluate(Check.MEASURE_EXTENT, Scope.PART),
                Optional.of(row.band().kind())));
  }

  /**
   * Answers a size where the rows tell by grades how far damage goes. No row says which sizes a
   * grade covers, so a size asks for the most that any of them asks for, short of retirement.
   *
   * @param bands the rows of an edition for one defect at one site; not null
   * @param site the site; not null
   * @param extent what was measured; not null
   * @return the demand of the strictest row, or an expert's evaluation if none keeps the element
   *     out; empty if the extent is no length, area or count, or the rows tell no such grades
   */
  public static Optional<Demand> ofSize(List<DefectRow> bands, Site site, Extent extent) {
    boolean size = extent.kind().filter(kind -> kind != ExtentKind.GRADE).isPresent();
    boolean graded =
        !bands.isEmpty()
            && bands.get(0).band() instanceof Band.Grades grades
            && grades.scale() == GradeScale.SEVERITY;
    if (!size || !graded) {
      return Optional.empty();
    }
    Optional<DefectRow> strictest = strictest(bands);
    return Optional.of(
        new Demand(
            strictest.isPresent() ? Kind.RULE : Kind.NO_RULE,
            site,
            strictest,
            strictest
                .map(DefectRow::effect)
                .orElseGet(() -> new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.PART)),
            Optional.of(ExtentKind.GRADE)));
  }

  /** The strictest short of retirement; of those that no order tells apart, that of more damage. */
  private static Optional<DefectRow> strictest(List<DefectRow> bands) {
    return BandJoints.inOrder(bands).stream()
        .filter(row -> row.effect().effectKind() != EffectKind.RETIRE)
        .reduce((one, next) -> next.effect().against(one.effect()).isLess() ? one : next)
        .filter(row -> row.effect().keepsOut());
  }

  private static Demand at(Site site, Finding finding, Element element, DefectTable defects) {
    Ruling ruling =
        defects.ruling(element.kind(), element.use(), site, finding.defect(), finding.extent());
    if (ruling instanceof Ruling.Covered covered) {
      return new Demand(
          Kind.RULE, site, Optional.of(covered.row()), covered.row().effect(), Optional.empty());
    }
    if (ruling instanceof Ruling.MustMeasure measure) {
      return ofSize(measure.rows(), site, finding.extent())
          .orElseGet(
              () ->
                  new Demand(
                      Kind.MUST_MEASURE,
                      site,
                      Optional.empty(),
                      new Effect.Evaluate(Check.MEASURE_EXTENT, Scope.PART),
                      Optional.of(measure.by())));
    }
    return new Demand(
        Kind.NO_RULE,
        site,
        Optional.empty(),
        new Effect.Evaluate(Check.EXPERT_EVALUATION, Scope.PART),
        Optional.empty());
  }
}
