package org.ensemblerules.tables.json;

import java.util.ArrayList;
import java.util.List;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;
import org.jspecify.annotations.Nullable;

/**
 * Collects every fault of one reading, over any number of texts. Beyond a thousand, faults are
 * counted but not kept, so that a hostile text cannot fill the memory.
 */
public final class Faults {
  private static final int MOST_KEPT = 1_000;

  private final List<JsonFault> kept = new ArrayList<>();
  private int count;
  private @Nullable JsonFault firstNotKept;

  /**
   * Adds a fault.
   *
   * @param fault the fault
   */
  public void add(JsonFault fault) {
    count++;
    if (kept.size() < MOST_KEPT) {
      kept.add(fault);
    } else if (firstNotKept == null) {
      firstNotKept = fault;
    }
  }

  /**
   * Returns how many faults were added. A reader compares the number before and after to know
   * whether a part was sound.
   */
  public int count() {
    return count;
  }

  /** Tells whether faults were added since the count stood at a number. */
  public boolean since(int earlier) {
    return count > earlier;
  }

  /** Returns the faults in the order found; of very many the first ones, and how many more. */
  public List<JsonFault> list() {
    List<JsonFault> all = new ArrayList<>(kept);
    if (firstNotKept != null) {
      all.add(
          new JsonFault(
              firstNotKept.code(),
              firstNotKept.source(),
              "",
              (count - MOST_KEPT) + " more faults from here on",
              "none"));
    }
    return List.copyOf(all);
  }

  /**
   * Ends the reading.
   *
   * @param value what was read; may be null only if there is a fault
   * @return what was read, or the faults if there is any
   */
  public <T> Checked<T, JsonFault> outcome(@Nullable T value) {
    if (count > 0) {
      return new Checked.Refused<>(list());
    }
    if (value == null) {
      throw new IllegalStateException("nothing was read, yet no fault was added");
    }
    return new Checked.Sound<>(value);
  }
}
