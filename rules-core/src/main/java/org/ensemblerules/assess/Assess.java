package org.ensemblerules.assess;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import org.ensemblerules.ruleset.RuleSet;
import org.ensemblerules.source.Row;
import org.ensemblerules.verdict.Assessment;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Verdict;

/**
 * Answers whether an element may go back to service, why or why not, and what would bring it back.
 *
 * <p>Whatever is unknown, unreadable or contradictory keeps an element out; only what was observed
 * retires it. The same inputs give the same verdict, whatever the order they come in. Safe for use
 * by many threads.
 */
public final class Assess {
  // Reasons are put into an order of their own. What keeps most elements out stands first and what
  // takes longest last, since whoever asks for no more than whether it is in service needs no more
  // than one reason.
  private static final List<Question> QUESTIONS =
      List.of(
          AgeQuestion::ask,
          FindingQuestion::ask,
          CurrencyQuestion::ask,
          RecordQuestion::ask,
          AwayQuestion::ask,
          LabelQuestion::ask,
          RetiredLayerQuestion::ask,
          NotFitted::ask,
          UndatedQuestion::ask,
          InspectionQuestion::ask,
          WorkQuestion::ask,
          CareQuestion::ask,
          WashQuestion::ask,
          DecisionQuestion::ask,
          CheckQuestion::ask,
          TestQuestion::ask,
          TaskQuestion::ask);

  private Assess() {}

  /**
   * Judges an element.
   *
   * @param rules the rules; not null
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day judged for; not null
   * @return the verdict; never null
   */
  public static Verdict assess(RuleSet rules, Assessment assessment, LocalDate asOf) {
    return assess(file(rules, assessment, asOf));
  }

  static Verdict assess(CaseFile file) {
    List<Reason> reasons = new ArrayList<>();
    Consumer<Reason> all = reasons::add;
    for (Question question : QUESTIONS) {
      question.ask(file, all);
    }
    return Conclusion.of(file, reasons);
  }

  /**
   * Lists every row that is read to reach a verdict: those that its reasons, ages and due dates
   * rest on, and those that are found to ask for nothing. A row of the rules that is not among them
   * could be taken away and would leave the verdict as it is. A verdict keeps none of them, so that
   * it does not keep the case; they are found anew at each call, by judging again.
   *
   * @param rules the rules; not null
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day judged for; not null
   * @return the rows by their keys, each with its key, origin and basis; never null
   */
  public static List<Row> trace(RuleSet rules, Assessment assessment, LocalDate asOf) {
    CaseFile file = file(rules, assessment, asOf);
    return Trace.of(file, assess(file));
  }

  /**
   * Tells only whether an element may be in service, as {@link #assess} would, with less work.
   *
   * @param rules the rules; not null
   * @param assessment the element, its history and what was found now; not null
   * @param asOf the day judged for; not null
   * @return in or out; never null
   */
  public static Service service(RuleSet rules, Assessment assessment, LocalDate asOf) {
    CaseFile file = file(rules, assessment, asOf);
    AtomicBoolean out = new AtomicBoolean();
    Consumer<Reason> any =
        reason -> {
          if (reason.effect().keepsOut()) {
            out.set(true);
          }
        };
    for (Question question : QUESTIONS) {
      question.ask(file, any);
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
