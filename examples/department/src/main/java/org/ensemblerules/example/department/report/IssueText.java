package org.ensemblerules.example.department.report;

import org.ensemblerules.issue.IssueAnswer;

/** Whether an element may be issued to a member. */
public final class IssueText {
  private IssueText() {}

  /**
   * Writes the answer.
   *
   * @param answer the answer; not null
   * @return the text; never null
   */
  public static String of(IssueAnswer answer) {
    TextPage page = new TextPage();
    page.line(
        answer.element().id()
            + " to "
            + answer.member().name()
            + (answer.mayBeIssued() ? ": it may be issued" : ": not to be issued"));
    answer.against().forEach(why -> page.wrapped("  - ", PlainWords.of(why)));
    return page.toString();
  }
}
