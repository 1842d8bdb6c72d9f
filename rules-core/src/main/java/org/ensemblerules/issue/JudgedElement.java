package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.assess.Assess;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.EndEvent;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/**
 * An element with its verdict and the notices that touch it. Every question about a department is
 * asked of these, so that each element is judged once.
 *
 * @param kept the element, what is known of it, and where it is kept; not null
 * @param verdict what the rules say of it; not null
 * @param notices the notices that touch it or may, by their names; not null
 * @since 0.1
 */
public record JudgedElement(KeptElement kept, Verdict verdict, List<NoticeAnswer> notices) {
  /** Copies the list. */
  public JudgedElement {
    Objects.requireNonNull(kept, "kept");
    Objects.requireNonNull(verdict, "verdict");
    notices = ImmutableList.copyOf(notices);
  }

  /**
   * Judges an element.
   *
   * @param rules the rules; not null
   * @param kept the element and where it is kept; not null
   * @param notices the notices that are not settled; not null
   * @param asOf the day judged for; not null
   * @return the element with its verdict; never null
   */
  public static JudgedElement of(
      RuleSet rules, KeptElement kept, List<SafetyNotice> notices, LocalDate asOf) {
    Element element = kept.assessment().element();
    // A layer that an inspection saw does not vanish with its label.
    List<Optional<LayerKind>> labeled =
        rules.evidenceTables().labeledLayers(element, kept.assessment().history(), asOf);
    ImmutableList.Builder<NoticeAnswer> touching = ImmutableList.builder();
    notices.stream()
        .sorted(Comparator.comparing(SafetyNotice::id).thenComparing(SafetyNotice::toString))
        .forEach(
            notice -> {
              YesNoUnknown touched = notice.touches(element, labeled);
              if (touched != YesNoUnknown.NO) {
                touching.add(new NoticeAnswer(notice, touched));
              }
            });
    return new JudgedElement(kept, Assess.assess(rules, kept.assessment(), asOf), touching.build());
  }

  /**
   * Returns the element.
   *
   * @return the element; never null
   */
  public Element element() {
    return kept.assessment().element();
  }

  /**
   * Returns who has it and where it is.
   *
   * @return the whereabouts; never null
   */
  public Whereabouts whereabouts() {
    return kept.whereabouts();
  }

  /**
   * Tells whether it may be in service. A notice never makes the answer milder.
   *
   * @return in only if the rules say so and no notice touches it, or may; never null
   */
  public Service service() {
    return notices.isEmpty() ? verdict.service() : Service.OUT;
  }

  /**
   * Returns where it goes next. Where only a notice keeps it out, the gravest of them says: what it
   * certainly touches goes where the notice sends it, what it may touch to the gear room, where its
   * label is read.
   *
   * @return exactly one place if it is out; empty if it is in
   */
  public Optional<GoesTo> goesTo() {
    return verdict
        .goesTo()
        .or(
            () ->
                notices.stream()
                    .map(
                        notice ->
                            notice.touched() == YesNoUnknown.YES
                                ? notice.notice().asks().destination()
                                : Destination.GEAR_ROOM)
                    .max(Comparator.naturalOrder())
                    .map(GoesTo::of));
  }

  /**
   * Tells whether it was certainly disposed of, so that nothing is to be done with it any more. A
   * record that contradicts itself shows no such thing.
   *
   * @return true if the record says so, and nothing on it speaks against it
   */
  public boolean isGone() {
    return kept.assessment().history().events(EndEvent.Disposed.class).stream()
            .anyMatch(disposed -> disposed.when().date().certainlyBy(verdict.asOf()))
        && verdict.reasons().stream()
            .noneMatch(reason -> reason.kind() == ReasonKind.CONTRADICTION);
  }
}
