package org.ensemblerules.example.department.report;

import java.util.Arrays;
import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.ensemblerules.audit.words.AuditWords;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.Site;
import org.ensemblerules.history.Contradiction;
import org.ensemblerules.issue.Objection;
import org.ensemblerules.issue.SetGap;
import org.ensemblerules.measure.Bound;
import org.ensemblerules.measure.Ties;
import org.ensemblerules.repair.CostPolicy;
import org.ensemblerules.schedule.TaskKey;
import org.ensemblerules.source.Edition;
import org.ensemblerules.source.OriginId;
import org.ensemblerules.tables.ShippedRules;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.verdict.VerdictPart;
import org.ensemblerules.words.Sentences;
import org.ensemblerules.words.Words;

/** The library's English words, as the reports of this program use them. */
final class PlainWords {
  private static final Words WORDS = AuditWords.english();
  private static final Sentences SENTENCES = new Sentences(WORDS);

  /** Codes that the library has no words for, as they are written. */
  private static final Map<String, String> OTHERS =
      Stream.of(
              Contradiction.Kind.values(),
              CostPolicy.Against.values(),
              Ties.values(),
              Bound.values(),
              VerdictPart.values())
          .flatMap(Arrays::stream)
          .collect(
              Collectors.toUnmodifiableMap(
                  Enum::name,
                  code -> code.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                  (one, other) -> one));

  private static final Map<String, String> EDITIONS =
      ShippedRules.editions().stream()
          .collect(Collectors.toUnmodifiableMap(edition -> edition.id().value(), Edition::title));

  // No part of the key of a row or of an id.
  private static final Pattern CODE =
      Pattern.compile("(?<![-/@A-Z_0-9])[A-Z][A-Z_0-9]*[A-Z0-9](?![-/@A-Z_0-9])");

  /** As in ASTM_D5587: every group behind the first has a digit. */
  private static final Pattern METHOD = Pattern.compile("[A-Z]+(_[A-Z]*[0-9][A-Z0-9]*)+");

  private PlainWords() {}

  static String of(Enum<?> value) {
    return WORDS.label(value);
  }

  static String list(Collection<? extends Enum<?>> values) {
    return WORDS.labels(values);
  }

  static String of(Site site) {
    return WORDS.site(site);
  }

  /** What an effect calls for, without saying on what. */
  static String of(Effect effect) {
    return SENTENCES.of(effect);
  }

  /** What an effect asks somebody to do. */
  static String toDo(Effect effect, Site target) {
    return SENTENCES.toDo(effect, target);
  }

  /** Where an element goes, and for a service provider what they must be verified for. */
  static String of(GoesTo goesTo) {
    return SENTENCES.of(goesTo);
  }

  /** A verdict in one sentence. */
  static String of(Verdict verdict) {
    return SENTENCES.of(verdict);
  }

  /** The same, with how much of the element it falls on. */
  static String withScope(Effect effect) {
    return effect.keepsOut() ? of(effect) + " of the " + of(effect.scope()) : of(effect);
  }

  /** Whom rows permit to do something, and with which training. */
  static String permitted(Collection<PermissionRow> rows) {
    return who(rows.stream().map(PermissionRow::doer).toList());
  }

  /** Who may do something, and with which training. */
  static String who(Collection<PermittedDoer> doers) {
    return SENTENCES.of(doers);
  }

  /** What speaks against issuing or accepting an element. */
  static String of(Objection against) {
    return SENTENCES.of(against);
  }

  /** What keeps a set from being usable. */
  static String of(SetGap gap) {
    return SENTENCES.of(gap);
  }

  /** What has to be done, as in advanced cleaning. */
  static String of(TaskKey task) {
    return task.value().replace('-', ' ');
  }

  /** An edition by its title; what is none that comes with the library, by its name. */
  static String of(OriginId origin) {
    return EDITIONS.getOrDefault(origin.value(), origin.value());
  }

  /** A text of the library with its codes as words. */
  static String sentence(String text) {
    return CODE.matcher(WORDS.spelledOut(text))
        .replaceAll(found -> Matcher.quoteReplacement(word(found.group())));
  }

  private static String word(String code) {
    String edition = EDITIONS.get(code);
    if (edition != null) {
      return edition;
    }
    return METHOD.matcher(code).matches()
        ? code.replace('_', ' ')
        : OTHERS.getOrDefault(code, code);
  }
}
