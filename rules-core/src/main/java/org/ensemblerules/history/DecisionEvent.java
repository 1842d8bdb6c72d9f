package org.ensemblerules.history;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.defect.FindingId;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.Effect;
import org.ensemblerules.gear.Site;
import org.ensemblerules.source.InvalidValueException;

/**
 * What somebody decided about an element beside the rules.
 *
 * @since 0.1
 */
public sealed interface DecisionEvent extends Event {
  /**
   * An inspector decided more strictly than the rules, by judgment. It binds and stands with the
   * name until what was decided is done for it, or the inspector withdraws it; a decision to retire
   * the element is ended by nothing.
   *
   * @param when when; not null
   * @param id its name, by which work says that it answers it; one that an owner may give; not null
   * @param site on what; WHOLE_ELEMENT if on no part; not null
   * @param effect what is asked for; anything but a note; not null
   * @param by who decided; the name stands in every verdict; not null
   * @param why why, 1 to 300 characters; not null
   */
  record InspectorDecided(Moment when, FindingId id, Site site, Effect effect, Doer by, String why)
      implements DecisionEvent {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the effect is a note, the id one that labels show, or the
     *     text blank or too long
     */
    public InspectorDecided {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(id, "id").requireOwners();
      Objects.requireNonNull(site, "site");
      requireStrict(effect);
      Objects.requireNonNull(by, "by");
      Event.requireWords("InspectorDecided.why", why);
    }

    /**
     * Checks that an effect is one that a decision can ask for.
     *
     * @param effect the effect; not null
     * @return the same
     * @throws InvalidValueException if it is a note
     */
    public static Effect requireStrict(Effect effect) {
      InvalidValueException.require(
          effect.keepsOut(),
          "InspectorDecided.effect",
          effect.text(),
          "an effect that keeps the element out");
      return effect;
    }

    @Override
    public String name() {
      return "InspectorDecided";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * An inspector withdrew a decision of their own. It counts if whoever decided withdraws it, may
   * inspect on that day, and does not do so before it was made. A decision to retire the element is
   * not withdrawn.
   *
   * @param when when; not null
   * @param decision the name of the decision; not null
   * @param by who withdraws it; not null
   * @param why on what ground, 1 to 300 characters; not null
   */
  record DecisionWithdrawn(Moment when, FindingId decision, Doer by, String why)
      implements DecisionEvent {
    /**
     * Checks the values.
     *
     * @throws InvalidValueException if the name is one that no owner gives, or the text blank or
     *     too long
     */
    public DecisionWithdrawn {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(decision, "decision").requireOwners();
      Objects.requireNonNull(by, "by");
      Event.requireWords("DecisionWithdrawn.why", why);
    }

    @Override
    public String name() {
      return "DecisionWithdrawn";
    }

    @Override
    public Optional<Doer> doer() {
      return Optional.of(by);
    }
  }

  /**
   * The authority having jurisdiction decided otherwise than the rules. It is kept beside the
   * verdict and shown with it; it changes nothing that is computed.
   *
   * @param when when; not null
   * @param authority who, by name and office, 1 to 200 characters; not null
   * @param decision what, 1 to 300 characters; not null
   * @param why why, 1 to 300 characters; not null
   */
  record AuthorityDecided(Moment when, String authority, String decision, String why)
      implements DecisionEvent {
    /**
     * Checks the texts.
     *
     * @throws InvalidValueException if one is blank or too long
     */
    public AuthorityDecided {
      Objects.requireNonNull(when, "when");
      Event.requireName("AuthorityDecided.authority", authority);
      Event.requireWords("AuthorityDecided.decision", decision);
      Event.requireWords("AuthorityDecided.why", why);
    }

    @Override
    public String name() {
      return "AuthorityDecided";
    }
  }
}
