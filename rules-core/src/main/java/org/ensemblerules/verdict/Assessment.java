package org.ensemblerules.verdict;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.ensemblerules.defect.Finding;
import org.ensemblerules.gear.Element;
import org.ensemblerules.history.Event;
import org.ensemblerules.history.History;
import org.ensemblerules.schedule.ServiceRecord;
import org.ensemblerules.source.InvalidValueException;

/**
 * What is handed over to be judged: an element, what happened to it, every inspection among it, and
 * what was found now.
 */
public final class Assessment {
  private final Element element;
  private final History history;
  private final List<Finding> findings;

  private Assessment(Builder builder) {
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

  /** Collects what is handed over. */
  public static final class Builder {
    private final Element element;
    private History history = History.empty();
    private final List<Event> more = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private Builder(Element element) {
      this.element = Objects.requireNonNull(element, "element");
    }

    /**
     * Sets what happened to it, inspections included, in place of all that was given before.
     *
     * @param happened the history; not null
     * @return this builder
     */
    public Builder history(History happened) {
      history = Objects.requireNonNull(happened, "history");
      more.clear();
      return this;
    }

    /**
     * Adds something that happened to it.
     *
     * @param event the event; not null
     * @return this builder
     */
    public Builder event(Event event) {
      more.add(Objects.requireNonNull(event, "event"));
      return this;
    }

    private History happened() {
      return more.isEmpty()
          ? history
          : History.of(Stream.concat(history.events().stream(), more.stream()).toList());
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
