package org.ensemblerules.issue;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.effect.GoesTo;
import org.ensemblerules.gear.NamedElement;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.source.InvalidValueException;
import org.ensemblerules.verdict.Service;

/**
 * An element that safety notices touch, or may.
 *
 * @param element the element; not null
 * @param whereabouts who has it and where it is; not null
 * @param notices the notices, at least one; not null
 * @param without whether it might be in service without them; not null
 * @param goesTo where it goes with them; not null
 * @since 0.1
 */
public record NoticedElement(
    NamedElement element,
    Whereabouts whereabouts,
    List<NoticeAnswer> notices,
    Service without,
    GoesTo goesTo) {
  /**
   * Copies the list.
   *
   * @throws InvalidValueException if there is no notice
   */
  public NoticedElement {
    Objects.requireNonNull(element, "element");
    Objects.requireNonNull(whereabouts, "whereabouts");
    notices = ImmutableList.copyOf(notices);
    InvalidValueException.require(
        !notices.isEmpty(), "NoticedElement.notices", notices, "at least one");
    Objects.requireNonNull(without, "without");
    Objects.requireNonNull(goesTo, "goesTo");
  }

  /**
   * Takes down what notices do to an element.
   *
   * @param judged the element; not null
   * @return what they do; empty if none touches it, or it was disposed of
   */
  public static Optional<NoticedElement> of(JudgedElement judged) {
    return judged.notices().isEmpty() || judged.isGone()
        ? Optional.empty()
        : judged
            .goesTo()
            .map(
                goesTo ->
                    new NoticedElement(
                        judged.element().named(),
                        judged.whereabouts(),
                        judged.notices(),
                        judged.verdict().service(),
                        goesTo));
  }

  /**
   * Tells whether some notice certainly touches it.
   *
   * @return yes, or unknown if it is only possible; never no
   */
  public YesNoUnknown touched() {
    return notices.stream().anyMatch(notice -> notice.touched() == YesNoUnknown.YES)
        ? YesNoUnknown.YES
        : YesNoUnknown.UNKNOWN;
  }
}
