package org.ensemblerules.example.department.report;

import java.util.Collection;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.effect.PermissionRow;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.gear.Site;
import org.ensemblerules.issue.Objection;
import org.ensemblerules.issue.SetGap;
import org.ensemblerules.tables.ShippedWords;
import org.ensemblerules.verdict.Verdict;
import org.ensemblerules.words.Sentences;
import org.ensemblerules.words.Words;

/** The library's English words, as the reports of this program use them. */
final class PlainWords {
  private static final Words WORDS = ShippedWords.english();
  private static final Sentences SENTENCES = new Sentences(WORDS);

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

  /** A text of the library with its codes as words. */
  static String sentence(String text) {
    return WORDS.spelledOut(text);
  }
}
