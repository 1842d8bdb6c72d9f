package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.inspection.Inspection;
import org.ensemblerules.schedule.ServiceRecord;
import org.ensemblerules.source.InvalidValueException;

/**
 * What is handed over to be judged: an element, what happened to it, the inspections made now, and
 * what they found.
 */
public final class Assessment {
  private final Element element;
  private final History history;
  private final List<Inspection> inspections;
  private final List<Finding> findings;

  private Assessment(Builder builder) {
    this.element = builder.element;
    this.history = builder.history;
    this.inspections = ImmutableList.copyOf(builder.inspections);
    this.findings = ImmutableList.copyOf(builder.findings);
  }

  /**
   * Starts an assessment in which nothing was looked at.
   *
   * @param element the element; not null
   * @return the builder; never null
   */
  public static Builder builder(Element element) {
    return new Builder(element);
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
   * Returns what happened to it before.
   *
   * @return the history; never null
   */
  public History history() {
    return history;
  }

  /**
   * Returns what a schedule is asked about: the element and its history, to which the inspections
   * made now belong as well, and what was found now.
   *
   * @return the record, without duty periods; never null
   */
  public ServiceRecord serviceRecord() {
    List<Event> events = new ArrayList<>(history.events());
    inspections.forEach(now -> events.add(new Event.Inspected(now, 0)));
    return new ServiceRecord(element, History.of(events), Set.of(), findings);
  }

  /**
   * Returns the inspections made now.
   *
   * @return an unmodifiable list, as given; never null
   */
  public List<Inspection> inspections() {
    return inspections;
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
        && inspections.equals(other.inspections)
        && findings.equals(other.findings);
  }

  @Override
  public int hashCode() {
    return Objects.hash(element, history, inspections, findings);
  }

  /** Says all that was handed over on one line, so that two that differ differ here as well. */
  @Override
  public String toString() {
    return "Assessment["
        + element
        + ", "
        + history
        + ", inspections="
        + inspections
        + ", findings="
        + findings
        + "]";
  }

  /** Collects what is handed over. */
  public static final class Builder {
    private final Element element;
    private History history = History.empty();
    private final List<Inspection> inspections = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Builder(Element element) {
      this.element = Objects.requireNonNull(element, "element");
    }

    /**
     * Sets what happened before.
     *
     * @param before the history; not null
     * @return this builder
     */
    public Builder history(History before) {
      history = Objects.requireNonNull(before, "history");
      return this;
    }

    /**
     * Adds an inspection made now.
     *
     * @param inspection the inspection; not null
     * @return this builder
     */
    public Builder inspection(Inspection inspection) {
      inspections.add(Objects.requireNonNull(inspection, "inspection"));
      return this;
    }

    /**
     * Adds something found now.
     *
     * @param finding the finding; not null
     * @return this builder
     * @throws InvalidValueException if its name is one of what labels show
     */
    public Builder finding(Finding finding) {
      finding.id().requireOwners();
      findings.add(finding);
      return this;
    }

    /**
     * Makes the assessment.
     *
     * @return the assessment; never null
     */
    public Assessment build() {
      return new Assessment(this);
    }
  }
}
