package org.ensemblerules.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What was checked can be handed on as something else. */
class CheckedTest {
  @Test
  void somethingElseIsMadeOfWhatIsSound() {
    Checked<String, TableFault> sound = new Checked.Sound<>("seven");
    assertThat(sound.map(String::length)).isEqualTo(new Checked.Sound<>(5));
  }

  @Test
  void whatIsRefusedStaysRefused() {
    TableFault fault =
        new TableFault(FaultCode.NOT_ALLOWED, new RowKey("a"), "size", "7", "at least 8");
    Checked<String, TableFault> refused = new Checked.Refused<>(List.of(fault));
    assertThat(refused.<Integer>map(text -> fail(text))).isEqualTo(refused);
  }
}
