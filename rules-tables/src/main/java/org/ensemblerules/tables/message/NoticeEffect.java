package org.ensemblerules.tables.message;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.fleet.Readiness;
import org.ensemblerules.issue.NoticedElement;
import org.ensemblerules.issue.SafetyNotice;

/**
 * What safety notices do.
 *
 * @param notices the notices; not null
 * @param touched the elements that they touch, or may; not null
 * @param before who is ready without them; not null
 * @param after who is ready with them; not null
 * @since 0.1
 */
public record NoticeEffect(
    List<SafetyNotice> notices, List<NoticedElement> touched, Readiness before, Readiness after) {
  /** Copies the lists. */
  public NoticeEffect {
    notices = List.copyOf(notices);
    touched = List.copyOf(touched);
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
  }
}
