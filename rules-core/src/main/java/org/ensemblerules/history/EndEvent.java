package org.ensemblerules.history;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.source.InvalidValueException;

/**
 * What ended the service of an element, or of a layer of it.
 *
 * @since 0.1
 */
public sealed interface EndEvent extends Event {
  /**
   * It was retired for good.
   *
   * @param when when; not null
   * @param why why, 1 to 300 characters; not null
   */
  record Retired(Moment when, String why) implements EndEvent {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the reason is blank or too long
     */
    public Retired {
      Objects.requireNonNull(when, "when");
      Event.requireWords("Retired.why", why);
    }

    @Override
    public String name() {
      return "Retired";
    }
  }

  /**
   * One of its layers was retired for good. A retired layer never returns; the label of whatever
   * took its place dates that.
   *
   * @param when when; not null
   * @param layer which layer; not null
   * @param identification the identification on its label, 1 to 200 characters; empty if not known
   * @param why why, 1 to 300 characters; not null
   */
  record LayerRetired(Moment when, LayerKind layer, Optional<String> identification, String why)
      implements EndEvent {
    /**
     * Checks the texts.
     *
     * @throws InvalidValueException if a text is blank or too long
     */
    public LayerRetired {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(layer, "layer");
      identification.ifPresent(
          text -> Label.requireIdentification("LayerRetired.identification", text));
      Event.requireWords("LayerRetired.why", why);
    }

    @Override
    public String name() {
      return "LayerRetired";
    }
  }

  /**
   * It was disposed of.
   *
   * @param when when; not null
   * @param method how, 1 to 300 characters; not null
   */
  record Disposed(Moment when, String method) implements EndEvent {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the method is blank or too long
     */
    public Disposed {
      Objects.requireNonNull(when, "when");
      Event.requireWords("Disposed.method", method);
    }

    @Override
    public String name() {
      return "Disposed";
    }
  }
}
