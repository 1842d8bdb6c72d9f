package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.History;
import org.ensemblerules.schedule.ServiceRecord;

/**
 * What is handed over to be judged: an element, what happened to it, every inspection among it, and
 * what was found now.
 *
 * @since 0.1
 */
public final class Assessment {
  private final Element element;
  private final History history;
  private final List<Finding> findings;

  Assessment(AssessmentBuilder builder) {
    this.element = builder.element;
    this.history = builder.happened();
    this.findings = ImmutableList.copyOf(builder.findings);
  }

  /**
   * Starts an assessment in which nothing was looked at.
   *
   * @param element the element; not null
   * @return the builder; never null
   */
  public static AssessmentBuilder builder(Element element) {
    return new AssessmentBuilder(element);
  }

  /**
   * Returns the element.
   *
   * @return the element; never null
   */
  public Element element() {
    return element;
  }

  /**
   * Returns what happened to it.
   *
   * @return the history; never null
   */
  public History history() {
    return history;
  }

  /**
   * Returns what a schedule is asked about: the element, its history, and what was found now.
   *
   * @return the record, without duty periods; never null
   */
  public ServiceRecord serviceRecord() {
    return new ServiceRecord(element, history, Set.of(), findings);
  }

  /**
   * Returns what was found now.
   *
   * @return an unmodifiable list, as given; never null
   */
  public List<Finding> findings() {
    return findings;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Assessment other
        && element.equals(other.element)
        && history.equals(other.history)
        && findings.equals(other.findings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(element, history, findings);
  }

  /** Says all that was handed over on one line, so that two that differ differ here as well. */
  @Override
  public String toString() {
    return "Assessment[" + element + ", " + history + ", findings=" + findings + "]";
  }
}
