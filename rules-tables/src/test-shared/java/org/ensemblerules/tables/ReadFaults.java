package org.ensemblerules.tables;

import java.util.List;
import org.ensemblerules.source.Checked;
import org.ensemblerules.tables.message.JsonFault;

/** The faults for which a text was refused, as tests compare them. */
public final class ReadFaults {
  private ReadFaults() {}

  /** Each as its place, what kind it is, what was found and what may be. */
  public static List<String> of(Checked<?, JsonFault> read) {
    return ((Checked.Refused<?, JsonFault>) read)
        .faults().stream()
            .map(
                fault ->
                    fault.pointer()
                        + " "
                        + fault.code()
                        + ": "
                        + fault.found()
                        + "; "
                        + fault.allowed())
            .toList();
  }
}
