package org.ensemblerules.testkit;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.ensemblerules.effect.Credential;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Doer;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.PermittedDoer;
import org.ensemblerules.effect.Task;

/** Invented people and companies. */
public final class People {
  private static final LocalDate FROM = LocalDate.of(2000, 1, 1);
  private static final LocalDate THROUGH = LocalDate.of(2199, 12, 31);

  /** A member without any credential. */
  public static final Doer WEARER = new Doer("Member 7", EntityKind.MEMBER, List.of());

  /** A department whose people are trained for everything. */
  public static final Doer DEPARTMENT = trained("Department", EntityKind.ORGANIZATION);

  /** A department without any training. */
  public static final Doer UNTRAINED =
      new Doer("Untrained department", EntityKind.ORGANIZATION, List.of());

  /** A provider verified for everything. */
  public static final Doer PROVIDER =
      trained("Verified provider", EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER);

  /** The manufacturer of the fit elements. */
  public static final Doer MAKER = new Doer(FitGear.MAKER_NAME, EntityKind.MANUFACTURER, List.of());

  /** The manufacturer of other elements. */
  public static final Doer OTHER_MAKER =
      new Doer("Another maker", EntityKind.MANUFACTURER, List.of());

  private People() {}

  private static Doer trained(String name, EntityKind kind) {
    return new Doer(
        name,
        kind,
        Arrays.stream(CredentialScope.values())
            .map(scope -> new Credential(scope, FROM, THROUGH))
            .toList());
  }

  /**
   * Returns somebody whom a row permits to do its task to a fit element, on any day of this or the
   * last century.
   *
   * @param doer who is permitted
   * @return the doer
   */
  public static Doer permittedBy(PermittedDoer doer) {
    return switch (doer.entity()) {
      case MEMBER -> WEARER;
      case MANUFACTURER -> MAKER;
      case VERIFIED_INDEPENDENT_SERVICE_PROVIDER -> PROVIDER;
      default -> trained(doer.entity().name(), doer.entity());
    };
  }

  /**
   * Returns somebody whom the frozen rules permit to do a task to a fit element.
   *
   * @param task the task
   * @return the doer
   */
  public static Doer permitted(Task task) {
    return permittedBy(FrozenRules.rules().tables().permissions().permitted(task).get(0).doer());
  }
}
