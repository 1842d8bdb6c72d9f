package org.ensemblerules.history;

import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * What became of an element in use: from the shelf into hands, and from hand to hand.
 *
 * @since 0.1
 */
public sealed interface UseEvent extends Event {
  /**
   * It was received and has been on the shelf since. Only this says that gear is stock: that it was
   * never issued is never taken from a record that says nothing of an issue.
   *
   * @param when when it was received; not null
   */
  record Stocked(Moment when) implements UseEvent {
    /** Checks for null. */
    public Stocked {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "Stocked";
    }
  }

  /**
   * It was issued.
   *
   * @param when when; not null
   * @param holder to whom, 1 to 200 characters; not null
   */
  record Issued(Moment when, String holder) implements UseEvent {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the holder is blank or too long
     */
    public Issued {
      Objects.requireNonNull(when, "when");
      Event.requireName("Issued.holder", holder);
    }

    @Override
    public String name() {
      return "Issued";
    }
  }

  /**
   * It was returned.
   *
   * @param when when; not null
   */
  record Returned(Moment when) implements UseEvent {
    /** Checks for null. */
    public Returned {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "Returned";
    }
  }

  /**
   * It was worn to an incident or a training.
   *
   * @param when when; not null
   */
  record Used(Moment when) implements UseEvent {
    /** Checks for null. */
    public Used {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "Used";
    }
  }

  /**
   * It went to others, came back from them, or was lost, stolen or found again.
   *
   * @param when when; not null
   * @param transfer how; not null
   * @param to to whom or where it went; of what was lost, stolen or found again, where; 1 to 200
   *     characters; not null
   */
  record Moved(Moment when, Transfer transfer, String to) implements UseEvent {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the receiver is blank or too long
     */
    public Moved {
      Objects.requireNonNull(when, "when");
      Objects.requireNonNull(transfer, "transfer");
      Event.requireName("Moved.to", to);
    }

    @Override
    public String name() {
      return "Moved";
    }
  }

  /**
   * It was taken out of service for the time being.
   *
   * @param when when; not null
   * @param why why, 1 to 300 characters; not null
   */
  record TakenOut(Moment when, String why) implements UseEvent {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the reason is blank or too long
     */
    public TakenOut {
      Objects.requireNonNull(when, "when");
      Event.requireWords("TakenOut.why", why);
    }

    @Override
    public String name() {
      return "TakenOut";
    }
  }

  /**
   * It was put back in service.
   *
   * @param when when; not null
   */
  record BackInService(Moment when) implements UseEvent {
    /** Checks for null. */
    public BackInService {
      Objects.requireNonNull(when, "when");
    }

    @Override
    public String name() {
      return "BackInService";
    }
  }
}
