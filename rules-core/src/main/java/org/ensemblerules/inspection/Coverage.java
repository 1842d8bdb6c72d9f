package org.ensemblerules.inspection;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.Sets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.RowKey;

/**
 * Whether an inspection looked at all it must.
 *
 * @param required how many criteria such an inspection of such an element has; 0 if there is no
 *     such inspection
 * @param notDone criteria not looked at, or not mentioned, in the order of the inspection
 * @param withoutEquipment criteria said to be clear though what they need was not at hand
 * @param contradictory criteria listed with different outcomes, or said to be not fitted though
 *     every such element has the part
 * @param unknown keys that are no criterion of this inspection
 * @param found criteria at which something was found
 * @param clear criteria at which nothing was found, by what the inspection says
 * @param signedOff criteria of which what came of them rests on the sign-off alone
 * @param unknownFindings findings that the sign-off names and no event says anything of
 * @since 0.1
 */
public record Coverage(
    int required,
    List<CriterionRow> notDone,
    List<CriterionRow> withoutEquipment,
    List<CriterionRow> contradictory,
    List<RowKey> unknown,
    List<CriterionRow> found,
    List<CriterionRow> clear,
    List<CriterionRow> signedOff,
    List<FindingId> unknownFindings) {
  /** Copies the lists. */
  public Coverage {
    notDone = ImmutableList.copyOf(notDone);
    withoutEquipment = ImmutableList.copyOf(withoutEquipment);
    contradictory = ImmutableList.copyOf(contradictory);
    unknown = ImmutableList.copyOf(unknown);
    found = ImmutableList.copyOf(found);
    clear = ImmutableList.copyOf(clear);
    signedOff = ImmutableList.copyOf(signedOff);
    unknownFindings = ImmutableList.copyOf(unknownFindings);
  }

  /**
   * Holds an inspection against the table.
   *
   * @param inspection the inspection; not null
   * @param element the element inspected; not null
   * @param table what must be looked at; not null
   * @param reading how a sign-off is read; not null
   * @return the coverage; never null
   */
  public static Coverage of(
      Inspection inspection, Element element, CriteriaTable table, SignOffReading reading) {
    List<CriterionRow> required = table.required(inspection.kind(), element.kind(), element.use());
    List<CriterionRow> notDone = new ArrayList<>();
    List<CriterionRow> withoutEquipment = new ArrayList<>();
    List<CriterionRow> contradictory = new ArrayList<>();
    List<CriterionRow> found = new ArrayList<>();
    List<CriterionRow> clear = new ArrayList<>(required.size());
    List<CriterionRow> signedOff = new ArrayList<>();
    Said said =
        new Said(
            inspection,
            required,
            table.places(inspection.kind(), element.kind(), element.use()),
            reading,
            element.notFitted().isEmpty()
                ? row -> false
                : row ->
                    isNotFitted(row, element) && table.mayBeNotFitted(row.key()).orElse(false));
    boolean allAtHand = inspection.atHand().size() == Equipment.values().length;
    for (int place = 0; place < required.size(); place++) {
      CriterionRow row = required.get(place);
      Said.Of of = said.of(place, row);
      Set<Outcome> outcomes = of.outcomes();
      if (outcomes.isEmpty() || outcomes.contains(Outcome.NOT_DONE)) {
        notDone.add(row);
      }
      if (outcomes.size() > 1
          || of.contradicted()
          || (outcomes.contains(Outcome.NOT_FITTED) && isFitted(row, element, table))) {
        contradictory.add(row);
      }
      if (outcomes.contains(Outcome.CLEAR)) {
        clear.add(row);
        if (!allAtHand && !inspection.atHand().containsAll(row.atHand())) {
          withoutEquipment.add(row);
        }
      }
      if (outcomes.contains(Outcome.FOUND)) {
        found.add(row);
      }
      if (of.signedOff()) {
        signedOff.add(row);
      }
    }
    return new Coverage(
        required.size(),
        notDone,
        withoutEquipment,
        contradictory,
        said.unknown(),
        found,
        clear,
        signedOff,
        inspection.signOff().map(reading::unknown).orElse(List.of()));
  }

  /**
   * Lists what is left to look at before the inspection is complete: what was not looked at, what
   * was called clear without what it needs, and what was told in two ways.
   *
   * @return the criteria in the order of the inspection, each once; never null
   */
  public List<CriterionRow> left() {
    return inOrder(Stream.of(notDone, withoutEquipment, contradictory).flatMap(List::stream));
  }

  /**
   * Lists what must be at hand for what is left to look at.
   *
   * @return the things, each once; empty if nothing is left or nothing is needed; never null
   */
  public Set<Equipment> toBring() {
    return left().stream().flatMap(row -> row.atHand().stream()).collect(Sets.toImmutableEnumSet());
  }

  /**
   * Takes what was said to be clear without having been looked at as not looked at.
   *
   * @param nothing of which criteria that were said to be clear nothing was seen; not null
   * @return the coverage, the same if there are none of them; never null
   */
  public Coverage notLookedAt(Predicate<CriterionRow> nothing) {
    List<CriterionRow> more = clear.stream().filter(nothing).toList();
    if (more.isEmpty()) {
      return this;
    }
    List<CriterionRow> left = new ArrayList<>(notDone);
    left.addAll(more);
    left.sort(Comparator.comparingInt(CriterionRow::order));
    List<CriterionRow> seen = new ArrayList<>(clear);
    seen.removeAll(more);
    return new Coverage(
        required,
        left.stream().distinct().toList(),
        withoutEquipment,
        contradictory,
        unknown,
        found,
        seen,
        signedOff,
        unknownFindings);
  }

  /**
   * Takes what another inspection looked at beside this one, which both make up together. Of two
   * outcomes the stricter counts: what one found is not clear, and what one saw and the other says
   * is not fitted contradicts. What the other found is left to its own coverage.
   *
   * @param part the coverage of the other, of the same kind and element; not null
   * @param looked whether what it says was looked at counts as looked at
   * @return the coverage of both together; never null
   */
  public Coverage with(Coverage part, boolean looked) {
    Set<CriterionRow> bothFound = union(found, part.found);
    Set<CriterionRow> properlyClear = new HashSet<>(clear);
    withoutEquipment.forEach(properlyClear::remove);
    if (looked) {
      part.clear.stream()
          .filter(row -> !part.withoutEquipment.contains(row))
          .forEach(properlyClear::add);
    }
    Set<CriterionRow> contrary =
        Sets.union(
            Sets.filter(union(clear, found), part::saysNotFitted),
            Sets.filter(union(part.clear, part.found), this::saysNotFitted));
    return new Coverage(
        required,
        inOrder(notDone.stream().filter(row -> !looked || part.notDone.contains(row))),
        inOrder(
            Stream.concat(
                    withoutEquipment.stream(),
                    looked ? part.withoutEquipment.stream() : Stream.empty())
                .filter(row -> !properlyClear.contains(row) && !bothFound.contains(row))),
        inOrder(Stream.of(contradictory, part.contradictory, contrary).flatMap(Collection::stream)),
        Stream.of(unknown, part.unknown).flatMap(List::stream).distinct().sorted().toList(),
        found,
        inOrder(
            Stream.concat(clear.stream(), looked ? part.clear.stream() : Stream.empty())
                .filter(row -> !bothFound.contains(row))),
        inOrder(Stream.concat(signedOff.stream(), looked ? part.signedOff.stream() : Stream.of())),
        Stream.of(unknownFindings, part.unknownFindings)
            .flatMap(List::stream)
            .distinct()
            .sorted()
            .toList());
  }

  /** What was neither left out nor seen was said to be not fitted. */
  private boolean saysNotFitted(CriterionRow row) {
    return !notDone.contains(row) && !clear.contains(row) && !found.contains(row);
  }

  private static Set<CriterionRow> union(List<CriterionRow> one, List<CriterionRow> other) {
    return Stream.of(one, other).flatMap(List::stream).collect(Collectors.toSet());
  }

  private static List<CriterionRow> inOrder(Stream<CriterionRow> rows) {
    return rows.distinct().sorted(Comparator.comparingInt(CriterionRow::order)).toList();
  }

  private static boolean isNotFitted(CriterionRow row, Element element) {
    for (Site site : row.sites()) {
      if (!element.isNotFitted(site)) {
        return false;
      }
    }
    return true;
  }

  /** A layer that carries a label of its own is fitted. */
  private static boolean isFitted(CriterionRow row, Element element, CriteriaTable table) {
    return !table.mayBeNotFitted(row.key()).orElse(false)
        || row.sites().stream().anyMatch(site -> isLabeled(site, element));
  }

  private static boolean isLabeled(Site site, Element element) {
    return (site.part() == Part.FABRIC || site.part() == Part.LABEL)
        && site.layer().map(element.layerLabels()::containsKey).orElse(false);
  }

  /**
   * Tells whether the inspection looked at all it must, with what it needs.
   *
   * @return true if there is such an inspection and nothing is not done, lacks its equipment,
   *     contradicts itself or is unknown, a finding named among it
   */
  public boolean isComplete() {
    return required > 0
        && notDone.isEmpty()
        && withoutEquipment.isEmpty()
        && contradictory.isEmpty()
        && unknown.isEmpty()
        && unknownFindings.isEmpty();
  }
}
