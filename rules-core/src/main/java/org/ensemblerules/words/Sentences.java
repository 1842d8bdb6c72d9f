package org.ensemblerules.words;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.effect.Task;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.issue.Objection;
import org.ensemblerules.issue.SetGap;
import org.ensemblerules.schedule.Due;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.Reason;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;
import org.ensemblerules.verdict.Step;
import org.ensemblerules.verdict.TaskDue;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.WayBack;

/**
 * Answers as English sentences, without codes. Another language puts its own in place of this
 * class; what it reads is public.
 *
 * @since 0.1
 */
public final class Sentences {
  /** How many steps a sentence bears before nobody reads on. */
  private static final int STEPS_TOLD = 3;

  private final Words words;

  /**
   * Makes the sentences.
   *
   * @param words what the codes are called, those of gear at the least; not null
   * @throws InvalidValueException if the words are not those of each {@link GearCodeSet}
   */
  public Sentences(Words words) {
    this.words = Objects.requireNonNull(words, "words");
    InvalidValueException.require(
        words.sets().containsAll(List.of(GearCodeSet.values())),
        "Sentences.words",
        words.sets(),
        "words for every code of gear");
  }

  /**
   * Says a verdict in one sentence, as in "Out of service: wash it, then have a trained inspector
   * inspect it."
   *
   * @param verdict the verdict; not null
   * @return one sentence; never null
   */
  public String of(Verdict verdict) {
    if (verdict.service() == Service.IN) {
      return capital(words.label(Service.IN)) + next(verdict).orElse("") + ".";
    }
    String out = capital(words.label(Service.OUT));
    if (verdict.wayBack() instanceof WayBack.Steps way) {
      return out + ": " + told(way.steps()) + ".";
    }
    return verdict.wayBack() instanceof WayBack.None none && verdict.headline() != Headline.RETIRE
        ? out + ": " + words.spelledOut(none.why()) + "."
        : out + " for good: retire it.";
  }

  /** What comes first, of what is due by some day. */
  private static Optional<String> next(Verdict verdict) {
    return verdict.due().stream()
        .filter(due -> due.by().isPresent())
        .findFirst()
        .map(due -> "; next is " + spaced(due.task()) + " by " + due.by().orElseThrow());
  }

  private String told(List<Step> steps) {
    Set<String> told = new LinkedHashSet<>();
    steps.forEach(step -> told.add(of(step)));
    int more = told.size() - STEPS_TOLD;
    String first = told.stream().limit(STEPS_TOLD).collect(Collectors.joining(", then "));
    return more > 0 ? first + ", then " + more + (more == 1 ? " more step" : " more steps") : first;
  }

  /**
   * Says a step of a way back, as in "replace the trim of the outer shell".
   *
   * @param step the step; not null
   * @return a few words without a full stop; never null
   */
  public String of(Step step) {
    return toDo(step.effect(), step.target());
  }

  /**
   * Says what an effect asks somebody to do.
   *
   * @param effect the effect; not null
   * @param target on what; not null
   * @return a few words without a full stop; never null
   */
  public String toDo(Effect effect, Site target) {
    if (effect instanceof Effect.Clean clean) {
      return onLayer(words.step(clean.kind()).orElseThrow(), target);
    } else if (effect instanceof Effect.Evaluate evaluate) {
      return onLayer(words.step(evaluate.check()).orElseThrow(), target);
    } else if (effect instanceof Effect.Repair) {
      return "repair " + the(target);
    } else if (effect instanceof Effect.ReplacePart) {
      return "replace " + the(target);
    } else if (effect instanceof Effect.Retire) {
      return "retire " + the(target);
    }
    return "nothing; compare it next time";
  }

  private String onLayer(String step, Site target) {
    return target.part() == Part.WHOLE_ELEMENT && target.layer().isEmpty()
        ? step
        : step + " (" + words.site(target) + ")";
  }

  private String the(Site target) {
    return target.part() == Part.WHOLE_ELEMENT && target.layer().isEmpty()
        ? "it"
        : "the " + words.site(target);
  }

  /**
   * Names what an effect calls for, as in "advanced repair".
   *
   * @param effect the effect; not null
   * @return a few words without a full stop; never null
   */
  public String of(Effect effect) {
    if (effect instanceof Effect.Note) {
      return "nothing; it is compared next time";
    } else if (effect instanceof Effect.Clean clean) {
      return words.label(Task.of(clean.kind()));
    } else if (effect instanceof Effect.Repair repair) {
      return words.label(Task.of(repair.repairClass()));
    } else if (effect instanceof Effect.ReplacePart replace) {
      return "replacement (" + words.label(Task.of(replace.repairClass())) + ")";
    } else if (effect instanceof Effect.Evaluate evaluate) {
      return words.label(evaluate.check());
    }
    return words.label(Task.RETIREMENT);
  }

  /**
   * Says what was seen and what it calls for.
   *
   * @param reason a reason of a verdict; not null
   * @return one sentence; never null
   */
  public String of(Reason reason) {
    String seen = capital(words.spelledOut(withoutTask(reason)));
    return reason.effect().keepsOut()
        ? seen + "; " + toDo(reason.effect(), reason.site()) + "."
        : seen + "; by itself this keeps nothing out.";
  }

  /**
   * Says a verdict, and every reason for it.
   *
   * @param verdict the verdict; not null
   * @return the sentence of the verdict, then one for each reason; never null
   */
  public List<String> explain(Verdict verdict) {
    return Stream.concat(Stream.of(of(verdict)), verdict.reasons().stream().map(this::of)).toList();
  }

  /**
   * What is overdue begins with the key of its task; what is missing is told after that in words.
   */
  private static String withoutTask(Reason reason) {
    int end = reason.kind() == ReasonKind.TASK_DUE ? reason.seen().indexOf(": ") : -1;
    return end < 0 ? reason.seen() : reason.seen().substring(end + 2);
  }

  /**
   * Says what falls due and when.
   *
   * @param due what is due; not null
   * @param asOf the day asked about; not null
   * @return one sentence; never null
   */
  public String of(Due due, LocalDate asOf) {
    return due(due.task(), due.layer(), due.by(), asOf);
  }

  /**
   * Says what falls due and when, as a verdict tells it.
   *
   * @param due what is due; not null
   * @param asOf the day of the verdict; not null
   * @return one sentence; never null
   */
  public String of(TaskDue due, LocalDate asOf) {
    return due(due.task(), due.layer(), due.by(), asOf);
  }

  private String due(
      TaskKey task, Optional<LayerKind> layer, Optional<LocalDate> by, LocalDate asOf) {
    return capital(spaced(task))
        + layer.map(of -> " of the " + words.label(of)).orElse("")
        + by.map(day -> when(day, asOf)).orElse(" is due now; nobody knows since when")
        + ".";
  }

  private static String when(LocalDate by, LocalDate asOf) {
    long over = ChronoUnit.DAYS.between(by, asOf);
    if (over <= 0) {
      return " is due by " + by;
    }
    return " was due by " + by + ", " + over + (over == 1 ? " day ago" : " days ago");
  }

  /** Keys of tasks are words with hyphens. */
  private static String spaced(TaskKey task) {
    return task.value().replace('-', ' ');
  }

  /**
   * Says what speaks against issuing or accepting an element.
   *
   * @param against what; not null
   * @return a few words without a full stop; never null
   */
  public String of(Objection against) {
    return words.spelledOut(against.text());
  }

  /**
   * Says what keeps a set from being complete and usable.
   *
   * @param gap what; not null
   * @return a few words without a full stop; never null
   */
  public String of(SetGap gap) {
    return words.spelledOut(gap.text());
  }

  /**
   * Says where an element goes, and for a service provider what they must be verified for.
   *
   * @param goesTo where; not null
   * @return a few words without a full stop; never null
   */
  public String of(GoesTo goesTo) {
    return words.label(goesTo.destination())
        + goesTo.scope().map(scope -> " verified for " + words.label(scope)).orElse("");
  }

  /**
   * Says who may do something, and with which training.
   *
   * @param doers who may; not null
   * @return a few words without a full stop, empty for nobody; never null
   */
  public String of(Collection<PermittedDoer> doers) {
    Map<Optional<CredentialScope>, List<String>> byNeed = new LinkedHashMap<>();
    doers.forEach(
        who ->
            byNeed
                .computeIfAbsent(who.needs(), needed -> new ArrayList<>())
                .add(words.label(who.entity())));
    return byNeed.entrySet().stream()
        .map(
            entry ->
                String.join(", ", entry.getValue())
                    + entry.getKey().map(need -> " trained for " + words.label(need)).orElse(""))
        .collect(Collectors.joining("; "));
  }

  private static String capital(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
