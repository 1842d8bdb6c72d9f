package org.ensemblerules.effect;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ensemblerules.gear.Element;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.Label;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.testkit.FitGear;
import org.ensemblerules.testkit.FrozenProvenance;
import org.ensemblerules.testkit.FrozenRules;
import org.ensemblerules.testkit.People;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may do what, on which day, and why not. */
class PermissionTest {
  private static final PermissionTable TABLE = FrozenRules.rules().tables().permissions();
  private static final Element COAT = FitGear.element(ElementKind.COAT).build();
  private static final LocalDate FROM = LocalDate.of(2022, 3, 1);
  private static final LocalDate THROUGH = LocalDate.of(2023, 2, 28);

  private static Doer department(Credential... credentials) {
    return new Doer("Department", EntityKind.ORGANIZATION, List.of(credentials));
  }

  private static Credential clean(LocalDate from, LocalDate through) {
    return new Credential(CredentialScope.CLEAN, from, through);
  }

  private static Permission cleaning(Doer doer, String date) {
    return TABLE.mayPerform(doer, Task.ADVANCED_CLEANING, COAT, MarkedDate.parse(date));
  }

  @ParameterizedTest
  @CsvSource({
    "2022-03-01, may do it",
    "2023-02-28, may do it",
    "2022-02-28, credential CLEAN holds only from 2022-03-01",
    "2023-03-01, credential CLEAN expired after 2023-02-28",
    "2022-03, may do it",
    "2023-02, may do it",
    "2022, credential CLEAN holds only from 2022-03-01",
    "2023, credential CLEAN expired after 2023-02-28",
    "UNKNOWN, 'the day is unknown, so no credential can be shown to have held'"
  })
  void aCredentialHoldsFromItsFirstToItsLastDay(String date, String text) {
    Permission permission = cleaning(department(clean(FROM, THROUGH)), date);
    assertThat(permission.text()).isEqualTo(text);
    assertThat(permission.granted()).isEqualTo(text.equals("may do it"));
  }

  @Test
  void credentialsMayFollowEachOther() {
    Doer doer =
        department(
            clean(LocalDate.of(2022, 1, 1), LocalDate.of(2022, 6, 30)),
            clean(LocalDate.of(2022, 7, 1), LocalDate.of(2022, 12, 31)));
    assertThat(cleaning(doer, "2022").granted()).isTrue();
    assertThat(cleaning(doer, "2022-06").granted()).isTrue();
    assertThat(cleaning(doer, "2023-01-01"))
        .isEqualTo(
            new Permission.ExpiredCredential(CredentialScope.CLEAN, LocalDate.of(2022, 12, 31)));
    assertThat(cleaning(doer, "2021-12-31"))
        .isEqualTo(
            new Permission.CredentialNotYetValid(CredentialScope.CLEAN, LocalDate.of(2022, 1, 1)));
  }

  @Test
  void aGapBetweenCredentialsIsSeenInsideAnImpreciseDate() {
    Doer doer =
        department(
            clean(LocalDate.of(2022, 1, 1), LocalDate.of(2022, 5, 10)),
            clean(LocalDate.of(2022, 5, 20), LocalDate.of(2022, 12, 31)));
    Permission expired =
        new Permission.ExpiredCredential(CredentialScope.CLEAN, LocalDate.of(2022, 5, 10));
    assertThat(cleaning(doer, "2022-05")).isEqualTo(expired);
    assertThat(cleaning(doer, "2022")).isEqualTo(expired);
    assertThat(cleaning(doer, "2022-04").granted()).isTrue();
    assertThat(cleaning(doer, "2022-06").granted()).isTrue();
  }

  @Test
  void aCredentialForSomethingElseDoesNotHelp() {
    Doer doer = department(new Credential(CredentialScope.INSPECT, FROM, THROUGH));
    assertThat(cleaning(doer, "2022-06-01"))
        .isEqualTo(new Permission.MissingCredential(CredentialScope.CLEAN));
    assertThat(cleaning(doer, "2022-06-01").text()).isEqualTo("credential CLEAN is missing");
  }

  @Test
  void anEntityWithoutARowMayNot() {
    Permission permission = cleaning(People.WEARER, "2022-06-01");
    assertThat(permission)
        .isEqualTo(new Permission.NotThisEntity(EntityKind.MEMBER, Task.ADVANCED_CLEANING));
    assertThat(permission.text()).isEqualTo("MEMBER may not do ADVANCED_CLEANING");
  }

  @Test
  void whereNoCredentialIsNeededAnyKnownDayWillDo() {
    Doer provider = new Doer("P", EntityKind.INDEPENDENT_SERVICE_PROVIDER, List.of());
    assertThat(cleaning(provider, "2022").granted()).isTrue();
    assertThat(cleaning(provider, "UNKNOWN")).isEqualTo(new Permission.DayUnknown());
  }

  @Test
  void onlyTheManufacturerOfThisElementIsItsManufacturer() {
    Element helmet = FitGear.element(ElementKind.HELMET).build();
    assertThat(asManufacturer("The maker", COAT).granted()).isTrue();
    assertThat(asManufacturer("The maker", helmet).granted()).isTrue();
    assertThat(asManufacturer("Another maker", COAT).text())
        .isEqualTo("Another maker is not shown to be the manufacturer; the label says The maker");
  }

  @Test
  void whereLabelsNameTwoManufacturersNeitherIsTheElements() {
    Element mixed =
        FitGear.element(ElementKind.COAT)
            .layer(LayerKind.LINER_SYSTEM, FitGear.label().manufacturer("Another maker").build())
            .build();
    assertThat(asManufacturer("The maker", mixed).granted()).isFalse();
    assertThat(asManufacturer("Another maker", mixed).text())
        .endsWith("the label says The maker, Another maker");
  }

  @Test
  void whereNoLabelNamesAManufacturerNobodyIsShownToBeIt() {
    Element unlabeled = FitGear.element(ElementKind.HELMET).label(Label.builder().build()).build();
    assertThat(asManufacturer("The maker", unlabeled).text()).endsWith("the label says UNKNOWN");
  }

  private static Permission asManufacturer(String name, Element element) {
    Doer doer = new Doer(name, EntityKind.MANUFACTURER, List.of());
    return TABLE.mayPerform(doer, Task.IDENTIFICATION, element, FROM);
  }

  @Test
  void whoMayIsListedInTheOrderOfTheirKinds() {
    List<PermissionRow> reversed = new ArrayList<>(TABLE.rows());
    Collections.reverse(reversed);
    PermissionTable table = PermissionTable.of(reversed).orElseThrow();
    assertThat(table.permitted(Task.ADVANCED_REPAIR))
        .extracting(PermissionRow::entity)
        .containsExactly(EntityKind.VERIFIED_INDEPENDENT_SERVICE_PROVIDER, EntityKind.MANUFACTURER);
    assertThat(table.permitted(Task.IDENTIFICATION))
        .allMatch(row -> row.task() == Task.IDENTIFICATION);
  }

  @Test
  void inAnEmptyTableNobodyMayDoAnything() {
    PermissionTable empty = PermissionTable.of(List.of()).orElseThrow();
    assertThat(empty.mayPerform(People.MAKER, Task.IDENTIFICATION, COAT, FROM))
        .isEqualTo(new Permission.NotThisEntity(EntityKind.MANUFACTURER, Task.IDENTIFICATION));
    assertThat(empty.permitted(Task.IDENTIFICATION)).isEmpty();
  }

  @Test
  void entityTwiceAndTasksWithoutADoerAreFaults() {
    PermissionRow row =
        new PermissionRow(
            FrozenProvenance.of("p"), Task.RETIREMENT, EntityKind.ORGANIZATION, Optional.empty());
    List<PermissionRow> rows =
        Stream.concat(TABLE.rows().stream(), Stream.of(row))
            .filter(each -> each.task() != Task.SANITIZING)
            .toList();
    assertThat(PermissionTable.of(rows).toString())
        .contains(
            "frozen/p, entity: found RETIREMENT by ORGANIZATION, allowed: each entity once per"
                + " task")
        .contains("task: found nobody may do [SANITIZING], allowed: a doer for every task");
  }
}
