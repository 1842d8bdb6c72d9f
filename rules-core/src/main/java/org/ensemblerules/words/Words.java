package org.ensemblerules.words;

import com.google.common.collect.ImmutableList;
import com.google.common.collect.ImmutableMap;
import com.google.common.collect.Sets;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.InvalidValueException;

/**
 * The words of one language for every code of some {@linkplain CodeSet sets}. Immutable. {@code
 * ShippedWords.english()} of the tables' module has ours; another language is another value.
 *
 * @since 0.1
 */
public final class Words {
  private static final Pattern NAME = Pattern.compile("(?<![-/A-Z_])[A-Z][A-Z_]*[A-Z](@[A-Z_]+)?");

  private final String language;
  private final ImmutableList<CodeSet> sets;
  private final ImmutableMap<Enum<?>, Term> terms;
  private final ImmutableMap<String, String> named;

  private Words(String language, ImmutableList<CodeSet> sets, ImmutableMap<Enum<?>, Term> terms) {
    this.language = language;
    this.sets = sets;
    this.terms = terms;
    this.named = named(terms);
  }

  /** A name that stands for different things, as ADVANCED does, is said as it is written. */
  private static ImmutableMap<String, String> named(Map<Enum<?>, Term> terms) {
    Map<String, String> named = new HashMap<>();
    terms.forEach(
        (code, term) ->
            named.merge(
                code.name(),
                term.label(),
                (first, second) -> first.equals(second) ? first : asWritten(code.name())));
    return ImmutableMap.copyOf(named);
  }

  private static String asWritten(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /**
   * Makes the words of a language.
   *
   * @param language its tag as BCP 47 writes it, as in {@code en}; not blank
   * @param sets the sets whose codes have words, such as those of gear; not null
   * @param terms the term of each code of each set, and no others; not null
   * @return the words; never null
   * @throws InvalidValueException if the language is blank, a code has no term, or a term is of a
   *     code of no set; it names the code
   */
  public static Words of(
      String language, Collection<? extends CodeSet> sets, Map<Enum<?>, Term> terms) {
    InvalidValueException.require(
        !language.isBlank(), "Words.language", language, "a language tag, as in en");
    Set<Enum<?>> others = new LinkedHashSet<>(terms.keySet());
    for (CodeSet set : sets) {
      for (Enum<?> code : set.codes()) {
        InvalidValueException.require(
            terms.containsKey(code),
            "Words.terms",
            "no term of " + set.jsonName() + " " + code.name(),
            "a term for each code");
        others.remove(code);
      }
    }
    InvalidValueException.require(
        others.isEmpty(), "Words.terms", others, "terms of codes of the sets only");
    return new Words(language, ImmutableList.copyOf(sets), ImmutableMap.copyOf(terms));
  }

  /**
   * Adds the words of further sets, so that one value has those of all.
   *
   * @param more words of the same language; not null
   * @return the words of the sets of both; never null
   * @throws InvalidValueException if the languages differ or both have words for a code
   */
  public Words and(Words more) {
    InvalidValueException.require(
        more.language.equals(language), "Words.language", more.language, language);
    Set<Enum<?>> twice = Sets.intersection(terms.keySet(), more.terms.keySet());
    InvalidValueException.require(
        twice.isEmpty(), "Words.terms", twice, "codes that have no words yet");
    return new Words(
        language,
        ImmutableList.<CodeSet>builder().addAll(sets).addAll(more.sets).build(),
        ImmutableMap.<Enum<?>, Term>builder().putAll(terms).putAll(more.terms).buildOrThrow());
  }

  /**
   * Returns the language.
   *
   * @return its tag, as in {@code en}; never null
   */
  public String language() {
    return language;
  }

  /**
   * Returns the sets whose codes have words here.
   *
   * @return the sets in their order; never null
   */
  public List<CodeSet> sets() {
    return sets;
  }

  /**
   * Returns what people call a code.
   *
   * @param code a code of one of the sets; not null
   * @return its term; never null
   * @throws InvalidValueException if the code is of no set
   */
  public Term term(Enum<?> code) {
    Term term = terms.get(Objects.requireNonNull(code, "code"));
    if (term == null) {
      throw new InvalidValueException("Words.term", code, "a code of one of the sets of codes");
    }
    return term;
  }

  /**
   * Returns the label of a code.
   *
   * @param code a code of one of the sets; not null
   * @return its label; never null
   * @throws InvalidValueException if the code is of no set
   */
  public String label(Enum<?> code) {
    return term(code).label();
  }

  /**
   * Returns the labels of codes.
   *
   * @param codes codes of the sets; not null
   * @return their labels in the order given, with commas; never null
   * @throws InvalidValueException if a code is of no set
   */
  public String labels(Collection<? extends Enum<?>> codes) {
    return codes.stream().map(this::label).collect(Collectors.joining(", "));
  }

  /**
   * Says where on an element, as in "trim of the outer shell".
   *
   * @param site where; not null
   * @return the words; never null
   */
  public String site(Site site) {
    String part = label(site.part());
    return site.layer()
        .map(
            layer ->
                site.part() == Part.WHOLE_ELEMENT ? label(layer) : part + " of the " + label(layer))
        .orElse(part);
  }

  /**
   * Puts words in place of the codes in a text of the library's, such as what a reason has seen.
   * What is no code of any set stays as it stands, and so does what ends a longer name, as in
   * {@code 1-03-COAT}.
   *
   * @param text the text; not null
   * @return the text without codes; never null
   */
  public String spelledOut(String text) {
    return NAME.matcher(text).replaceAll(found -> Matcher.quoteReplacement(word(found)));
  }

  private String word(MatchResult found) {
    String text = found.group();
    int at = text.indexOf('@');
    if (at < 0) {
      return named.getOrDefault(text, text);
    }
    // What somebody wrote may look like a site and be none.
    boolean isSite =
        GearCodeSet.PART.code(text.substring(0, at)).isPresent()
            && GearCodeSet.LAYER_KIND.code(text.substring(at + 1)).isPresent();
    return isSite ? site(Site.parse(text)) : text;
  }

  /**
   * Returns the words for a step, as in "wash it".
   *
   * @param code a code of one of the sets; not null
   * @return the words; empty if the code is nothing that somebody does
   * @throws InvalidValueException if the code is of no set
   */
  public Optional<String> step(Enum<?> code) {
    return term(code).step();
  }
}
