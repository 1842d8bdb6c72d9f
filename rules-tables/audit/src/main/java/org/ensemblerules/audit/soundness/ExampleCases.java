package org.ensemblerules.audit.soundness;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.GearRules;
import org.ensemblerules.audit.soundness.ExampleCase.Answer;
import org.ensemblerules.audit.soundness.ExampleCase.Condition;
import org.ensemblerules.audit.soundness.ExampleCase.Question;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.DefectRow;
import org.ensemblerules.defect.Demand;
import org.ensemblerules.defect.Extent;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.gear.Use;

/**
 * Makes example cases from the rows for defects: for each row one that it decides, and for each of
 * its conditions a neighbor that differs in that one only and that the row does not decide. So each
 * condition of each row is shown to change the answer by itself (modified condition and decision
 * coverage, as RTCA DO-178C names it). What is expected is worked out from the rows, not asked of
 * the compiled table.
 */
final class ExampleCases {
  private final AuditedRows rows;
  private final Map<CellAudit.Cell, List<DefectRow>> cells;

  private ExampleCases(GearRules rules) {
    this.rows = new AuditedRows(rules);
    this.cells = CellAudit.cells(rows.of(DefectRow.class));
  }

  static List<ExampleCase> of(GearRules rules) {
    ExampleCases cases = new ExampleCases(Objects.requireNonNull(rules, "rules"));
    return cases.rows.of(DefectRow.class).stream()
        .flatMap(row -> cases.of(row).stream())
        .collect(ImmutableList.toImmutableList());
  }

  private List<ExampleCase> of(DefectRow row) {
    List<DefectRow> cell =
        Objects.requireNonNull(
            cells.get(
                new CellAudit.Cell(
                    new AuditedRows.Gear(row.element(), row.use()), row.site(), row.defect())),
            "the row's own cell");
    List<Extent> extents = EdgeExtents.of(cell.stream().map(DefectRow::band));
    List<ExampleCase> cases = new ArrayList<>();
    // Its last edge, as that is the one at which a row may wrongly end.
    extents.stream()
        .filter(row.band()::holds)
        .reduce((first, last) -> last)
        .map(extent -> question(row, extent))
        .ifPresent(
            asked -> {
              cases.add(new ExampleCase(row.key(), Optional.empty(), asked, answers(asked)));
              for (Condition condition : Condition.values()) {
                neighbor(row, asked, condition, extents).ifPresent(cases::add);
              }
            });
    return cases;
  }

  private static Question question(DefectRow row, Extent extent) {
    return new Question(row.element(), row.use(), row.site(), row.defect(), extent);
  }

  /** The first change of one condition that changes what is called for; else whose row decides. */
  private Optional<ExampleCase> neighbor(
      DefectRow row, Question asked, Condition condition, List<Extent> extents) {
    List<ExampleCase> other =
        changed(asked, condition, extents)
            .map(each -> new ExampleCase(row.key(), Optional.of(condition), each, answers(each)))
            .filter(each -> each.expected().stream().noneMatch(answer -> by(row, answer)))
            .toList();
    return other.stream()
        .filter(each -> each.expected().stream().noneMatch(answer -> same(row, answer)))
        .filter(each -> each.expected().get(0).kind() != Demand.Kind.NO_SUCH_PART)
        .findFirst()
        .or(() -> other.stream().findFirst());
  }

  private static boolean by(DefectRow row, Answer answer) {
    return answer.row().filter(row.key()::equals).isPresent();
  }

  private static boolean same(DefectRow row, Answer answer) {
    return answer.effect().filter(row.effect()::equals).isPresent();
  }

  private static Stream<Question> changed(
      Question asked, Condition condition, List<Extent> extents) {
    return switch (condition) {
      case ELEMENT ->
          Arrays.stream(ElementKind.values())
              .filter(each -> each != asked.element())
              .map(each -> with(asked, each, asked.use(), asked.site()));
      case USE ->
          Arrays.stream(Use.values())
              .filter(each -> each != asked.use())
              .map(each -> with(asked, asked.element(), each, asked.site()));
      case PART ->
          Arrays.stream(Part.values())
              .filter(each -> each != asked.site().part())
              .map(each -> new Site(each, asked.site().layer()))
              .map(each -> with(asked, asked.element(), asked.use(), each));
      case LAYER ->
          Stream.concat(
                  Arrays.stream(LayerKind.values()).map(Optional::of),
                  Stream.of(Optional.<LayerKind>empty()))
              .filter(each -> !each.equals(asked.site().layer()))
              .map(each -> new Site(asked.site().part(), each))
              .map(each -> with(asked, asked.element(), asked.use(), each));
      case DEFECT ->
          Arrays.stream(DefectKind.values())
              .filter(each -> each != asked.defect())
              .map(
                  each ->
                      new Question(
                          asked.element(), asked.use(), asked.site(), each, asked.extent()));
      case EXTENT ->
          extents.stream()
              .filter(each -> !each.equals(asked.extent()))
              .map(
                  each ->
                      new Question(
                          asked.element(), asked.use(), asked.site(), asked.defect(), each));
    };
  }

  private static Question with(Question asked, ElementKind element, Use use, Site site) {
    return new Question(element, use, site, asked.defect(), asked.extent());
  }

  private List<Answer> answers(Question asked) {
    AuditedRows.Gear gear = new AuditedRows.Gear(asked.element(), asked.use());
    List<Site> there = rows.sites(gear);
    List<Site> meant =
        there.contains(asked.site()) || asked.site().layer().isPresent()
            ? there.stream().filter(asked.site()::equals).toList()
            : there.stream().filter(site -> site.part() == asked.site().part()).sorted().toList();
    if (meant.isEmpty()) {
      return List.of(
          new Answer(Demand.Kind.NO_SUCH_PART, asked.site(), Optional.empty(), Optional.empty()));
    }
    return meant.stream().flatMap(site -> answers(gear, site, asked)).toList();
  }

  /** What the editions answer, and then each row of an overlay that applies or may apply. */
  private Stream<Answer> answers(AuditedRows.Gear gear, Site site, Question asked) {
    List<DefectRow> candidates =
        cells.getOrDefault(new CellAudit.Cell(gear, site, asked.defect()), List.of());
    return Stream.concat(
        Stream.of(answer(candidates.stream().filter(rows::isOfTheEditions).toList(), site, asked)),
        candidates.stream()
            .filter(row -> !rows.isOfTheEditions(row) && !row.band().excludes(asked.extent()))
            .map(
                row ->
                    new Answer(
                        row.band().holds(asked.extent())
                            ? Demand.Kind.RULE
                            : Demand.Kind.MUST_MEASURE,
                        site,
                        Optional.of(row.key()),
                        Optional.of(row.effect()))));
  }

  private static Answer answer(List<DefectRow> candidates, Site site, Question asked) {
    Optional<DefectRow> row =
        candidates.stream().filter(each -> each.band().holds(asked.extent())).findFirst();
    Optional<Demand> size =
        row.isPresent() ? Optional.empty() : Demand.ofSize(candidates, site, asked.extent());
    Optional<DefectRow> asks = row.or(() -> size.flatMap(Demand::row));
    Demand.Kind kind = candidates.isEmpty() ? Demand.Kind.NO_RULE : Demand.Kind.MUST_MEASURE;
    return new Answer(
        row.isPresent() ? Demand.Kind.RULE : size.map(Demand::kind).orElse(kind),
        site,
        asks.map(DefectRow::key),
        asks.<Effect>map(DefectRow::effect));
  }
}
