package org.ensemblerules.record;

import java.util.List;
import java.util.Objects;
import org.ensemblerules.source.InvalidValueException;

/**
 * What a file holds of an item.
 *
 * @since 0.1
 */
public sealed interface FileAnswer {
  /**
   * All that is asked is there.
   *
   * @param row the row that asks; not null
   */
  record Present(RecordItemRow row) implements FileAnswer {
    /** Checks for null. */
    public Present {
      Objects.requireNonNull(row, "row");
    }
  }

  /**
   * Something is not there, or not known.
   *
   * @param row the row that asks; not null
   * @param what each thing missing and of what, in words; at least one
   */
  record Missing(RecordItemRow row, List<String> what) implements FileAnswer {
    /**
     * Copies the list.
     *
     * @throws InvalidValueException if nothing is named
     */
    public Missing {
      Objects.requireNonNull(row, "row");
      what = List.copyOf(what);
      InvalidValueException.require(!what.isEmpty(), "Missing.what", what, "at least one");
    }
  }

  /**
   * What is there cannot all be so.
   *
   * @param row the row that asks; not null
   * @param contradictions each, in words; at least one
   * @param missing what is missing besides; not null
   */
  record Inconsistent(RecordItemRow row, List<String> contradictions, List<String> missing)
      implements FileAnswer {
    /**
     * Copies the lists.
     *
     * @throws InvalidValueException if no contradiction is named
     */
    public Inconsistent {
      Objects.requireNonNull(row, "row");
      contradictions = List.copyOf(contradictions);
      missing = List.copyOf(missing);
      InvalidValueException.require(
          !contradictions.isEmpty(), "Inconsistent.contradictions", contradictions, "at least one");
    }
  }

  /**
   * There is nothing to record yet, as far as the file tells.
   *
   * @param row the row that will ask; not null
   * @param why why not, 1 to 200 characters; not null
   */
  record NotYet(RecordItemRow row, String why) implements FileAnswer {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if it is blank or too long
     */
    public NotYet {
      Objects.requireNonNull(row, "row");
      InvalidValueException.requireText("NotYet.why", why, 200);
    }
  }

  /**
   * No rule asks for the item.
   *
   * @param item the item; not null
   */
  record NoRule(RecordItem item) implements FileAnswer {
    /** Checks for null. */
    public NoRule {
      Objects.requireNonNull(item, "item");
    }
  }
}
