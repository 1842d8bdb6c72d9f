package org.ensemblerules.tables;

import java.util.List;
import org.ensemblerules.gates.MainClasses;
import org.ensemblerules.gates.PackageOrder;
import org.junit.jupiter.api.Test;

class ArchitectureTest {
  private static final PackageOrder ORDER =
      new PackageOrder(
          "org.ensemblerules.tables",
          List.of(
              "message",
              "json",
              "lines",
              "codec",
              "set",
              "load",
              // The root package itself: what users call, which reads all.
              ""));

  @Test
  void eachPackageReadsOnlyThoseBelowIt() {
    ORDER.eachReadsOnlyThoseBelow().check(MainClasses.all());
  }
}
