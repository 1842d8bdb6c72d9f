package org.ensemblerules.example.department;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class ProgressTest {
  private static String told(long lines, boolean watched) {
    StringWriter terminal = new StringWriter();
    Progress progress = Progress.of(new PrintWriter(terminal), watched);
    for (long i = 0; i < lines; i++) {
      progress.line();
    }
    progress.end();
    return terminal.toString();
  }

  @Test
  void aLongRunIsToldAndTakenAwayAgain() {
    assertThat(told(20_001, true)).isEqualTo("\r10000 lines\r20000 lines\r           \r");
  }

  @Test
  void aShortRunAndOneThatNobodyWatchesSayNothing() {
    assertThat(told(9_999, true)).isEmpty();
    assertThat(told(50_000, false)).isEmpty();
  }
}
