package org.ensemblerules.verdict;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import org.ensemblerules.ruleset.RuleSet;

/**
 * Answers whether an element may go back to service, why or why not, and what would bring it back.
 *
 * <p>Whatever is unknown, unreadable or contradictory keeps an element out; only what was observed
 * retires it. The same inputs give the same verdict, whatever the order they come in. Safe for use
 * by many threads.
 */
public final class Assess {
  private static final List<Question> QUESTIONS =
      List.of(
          RecordQuestion::ask,
          RetiredLayerQuestion::ask,
          LabelQuestion::ask,
          NotFitted::ask,
          AgeQuestion::ask,
          InspectionQuestion::ask,
          CurrencyQuestion::ask,
          TaskQuestion::ask,
          CareQuestion::ask,
          WashQuestion::ask,
          FindingQuestion::ask,
          CheckQuestion::ask,
          TestQuestion::ask);

  private Assess() {}

  /**
   * Judges an element.
   *
   * @param rules the rules; not null
   * @param assessment the element, its history, the inspections made now and what they found; not
   *     null
   * @param asOf the day judged for; not null
   * @return the verdict; never null
   */
  public static Verdict assess(RuleSet rules, Assessment assessment, LocalDate asOf) {
    CaseFile file = file(rules, assessment, asOf);
    List<Reason> reasons = new ArrayList<>();
    QUESTIONS.forEach(question -> question.ask(file, reasons::add));
    return new Verdict(file, reasons);
  }

  /**
   * Tells only whether an element may be in service, as {@link #assess} would, with less work.
   *
   * @param rules the rules; not null
   * @param assessment the element, its history, the inspections made now and what they found; not
   *     null
   * @param asOf the day judged for; not null
   * @return in or out; never null
   */
  public static Service service(RuleSet rules, Assessment assessment, LocalDate asOf) {
    CaseFile file = file(rules, assessment, asOf);
    AtomicBoolean out = new AtomicBoolean();
    for (Question question : QUESTIONS) {
      question.ask(
          file,
          reason -> {
            if (reason.effect().keepsOut()) {
              out.set(true);
            }
          });
      if (out.get()) {
        return Service.OUT;
      }
    }
    return Service.IN;
  }

  private static CaseFile file(RuleSet rules, Assessment assessment, LocalDate asOf) {
    return new CaseFile(
        Objects.requireNonNull(rules, "rules"),
        Objects.requireNonNull(assessment, "assessment"),
        Objects.requireNonNull(asOf, "asOf"));
  }
}
