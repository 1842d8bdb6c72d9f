package org.ensemblerules.example.department.demo;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;

/**
 * Who cleans, inspects and repairs for the department, and what they are trained for until when.
 */
final class Trades {
  /** The department's own gear room, trained for all that a department does itself. */
  static final Doer GEAR_ROOM =
      doer(
          "Exampleton gear room, X. Instance",
          EntityKind.ORGANIZATION,
          "2014-01-01",
          "2027-12-31",
          CredentialScope.INSPECT,
          CredentialScope.LINER_INSPECTION,
          CredentialScope.CLEAN,
          CredentialScope.SANITIZE,
          CredentialScope.BASIC_REPAIR);

  /** Trained once for basic repair; the training ran out. */
  static final Doer LAPSED_MENDER =
      doer(
          "Exampleton gear room, Y. Bygone",
          EntityKind.ORGANIZATION,
          "2021-07-01",
          "2024-06-30",
          CredentialScope.BASIC_REPAIR);

  /** A member of the department whom nobody has trained to inspect. */
  static final Doer UNTRAINED =
      new Doer("Exampleton gear room, Z. Newcomer", EntityKind.ORGANIZATION, List.of());

  /** A verified independent service provider. */
  static final Doer PROVIDER =
      doer(
          "Invented Gear Care",
          EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER,
          "2014-01-01",
          "2028-12-31",
          CredentialScope.values());

  /** A tailor in town; no provider at all in the eyes of the later editions. */
  static final Doer TAILOR =
      doer(
          "Pretend Tailoring",
          EntityKind.INDEPENDENT_SERVICE_PROVIDER,
          "2014-01-01",
          "2028-12-31",
          CredentialScope.BASIC_REPAIR);

  /** The manufacturer of most of the department's gear. */
  static final Doer MAKER_ONE = new Doer("Maker One", EntityKind.MANUFACTURER, List.of());

  private Trades() {}

  private static Doer doer(
      String name, EntityKind kind, String from, String through, CredentialScope... scopes) {
    return new Doer(
        name,
        kind,
        Arrays.stream(scopes)
            .map(scope -> new Credential(scope, LocalDate.parse(from), LocalDate.parse(through)))
            .toList());
  }
}
