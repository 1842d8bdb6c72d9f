package org.ensemblerules.words;

import com.google.common.collect.ImmutableList;
import java.util.List;
import org.ensemblerules.care.CareAction;
import org.ensemblerules.care.CareEntry;
import org.ensemblerules.care.CareManner;
import org.ensemblerules.care.CareStanding;
import org.ensemblerules.care.Contaminant;
import org.ensemblerules.care.Exposure;
import org.ensemblerules.care.MachineType;
import org.ensemblerules.care.WashMeasure;
import org.ensemblerules.care.WashPractice;
import org.ensemblerules.defect.DefectKind;
import org.ensemblerules.defect.ExtentKind;
import org.ensemblerules.defect.Grade;
import org.ensemblerules.effect.Check;
import org.ensemblerules.effect.CleaningKind;
import org.ensemblerules.effect.CredentialScope;
import org.ensemblerules.effect.Destination;
import org.ensemblerules.effect.EffectKind;
import org.ensemblerules.effect.EntityKind;
import org.ensemblerules.effect.HandlingDuty;
import org.ensemblerules.effect.RepairClass;
import org.ensemblerules.effect.Scope;
import org.ensemblerules.effect.Task;
import org.ensemblerules.fieldcheck.Condition;
import org.ensemblerules.fleet.Levelled;
import org.ensemblerules.gear.ElementKind;
import org.ensemblerules.gear.LayerKind;
import org.ensemblerules.gear.Legibility;
import org.ensemblerules.gear.Part;
import org.ensemblerules.gear.Presence;
import org.ensemblerules.gear.Use;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.CheckResult;
import org.ensemblerules.history.Transfer;
import org.ensemblerules.inspection.Equipment;
import org.ensemblerules.inspection.EvidenceGrade;
import org.ensemblerules.inspection.InspectionKind;
import org.ensemblerules.inspection.Occasion;
import org.ensemblerules.inspection.Outcome;
import org.ensemblerules.issue.Join;
import org.ensemblerules.issue.ObjectionKind;
import org.ensemblerules.issue.SafetyNotice;
import org.ensemblerules.record.PfasContent;
import org.ensemblerules.record.RecordDetail;
import org.ensemblerules.record.RecordItem;
import org.ensemblerules.record.RetentionStart;
import org.ensemblerules.record.SaleParty;
import org.ensemblerules.repair.RepairLevel;
import org.ensemblerules.retirement.CustodyStep;
import org.ensemblerules.retirement.DisposalRoute;
import org.ensemblerules.retirement.RetirementReason;
import org.ensemblerules.retirement.RouteCondition;
import org.ensemblerules.ruleset.AdoptionKind;
import org.ensemblerules.ruleset.OverlayKind;
import org.ensemblerules.ruleset.Subject;
import org.ensemblerules.schedule.Start;
import org.ensemblerules.source.Confidence;
import org.ensemblerules.source.HowSeen;
import org.ensemblerules.source.SourceKind;
import org.ensemblerules.strength.Construction;
import org.ensemblerules.strength.Direction;
import org.ensemblerules.strength.FailureMode;
import org.ensemblerules.strength.NoResultReason;
import org.ensemblerules.strength.Property;
import org.ensemblerules.strength.SpecimenOrigin;
import org.ensemblerules.strength.Statistic;
import org.ensemblerules.strength.TestOutcome;
import org.ensemblerules.verdict.Headline;
import org.ensemblerules.verdict.OutBecause;
import org.ensemblerules.verdict.ReasonKind;
import org.ensemblerules.verdict.Service;

/**
 * The codes of whatever a record may say of gear and whatever an answer says back. Units have
 * symbols of their own and are none of them.
 *
 * @since 0.1
 */
public enum GearCodeSet implements CodeSet {
  /** Codes of {@link ElementKind}. */
  ELEMENT_KIND("elementKind", ElementKind.values()),
  /** Codes of {@link Use}. */
  USE("use", Use.values()),
  /** Codes of {@link LayerKind}. */
  LAYER_KIND("layerKind", LayerKind.values()),
  /** Codes of {@link Part}. */
  PART("part", Part.values()),
  /** Codes of {@link Presence}. */
  PRESENCE("presence", Presence.values()),
  /** Codes of {@link DefectKind}. */
  DEFECT_KIND("defectKind", DefectKind.values()),
  /** Codes of {@link ExtentKind}. */
  EXTENT_KIND("extentKind", ExtentKind.values()),
  /** Codes of {@link Grade}. */
  GRADE("grade", Grade.values()),
  /** Codes of {@link EffectKind}. */
  EFFECT_KIND("effectKind", EffectKind.values()),
  /** Codes of {@link Scope}. */
  SCOPE("scope", Scope.values()),
  /** Codes of {@link Check}. */
  CHECK("check", Check.values()),
  /** Codes of {@link CheckResult}. */
  CHECK_RESULT("checkResult", CheckResult.values()),
  /** Codes of {@link Task}. */
  TASK("task", Task.values()),
  /** Codes of {@link CleaningKind}. */
  CLEANING_KIND("cleaningKind", CleaningKind.values()),
  /** Codes of {@link RepairClass}. */
  REPAIR_CLASS("repairClass", RepairClass.values()),
  /** Codes of {@link EntityKind}. */
  ENTITY_KIND("entityKind", EntityKind.values()),
  /** Codes of {@link CredentialScope}. */
  CREDENTIAL_SCOPE("credentialScope", CredentialScope.values()),
  /** Codes of {@link Destination}. */
  DESTINATION("destination", Destination.values()),
  /** Codes of {@link HandlingDuty}. */
  HANDLING_DUTY("handlingDuty", HandlingDuty.values()),
  /** Codes of {@link InspectionKind}. */
  INSPECTION_KIND("inspectionKind", InspectionKind.values()),
  /** Codes of {@link Outcome}. */
  OUTCOME("outcome", Outcome.values()),
  /** Codes of {@link EvidenceGrade}. */
  EVIDENCE_GRADE("evidenceGrade", EvidenceGrade.values()),
  /** Codes of {@link Occasion}. */
  OCCASION("occasion", Occasion.values()),
  /** Codes of {@link Equipment}. */
  EQUIPMENT("equipment", Equipment.values()),
  /** Codes of {@link Condition}. */
  CONDITION("condition", Condition.values()),
  /** Codes of {@link Exposure}. */
  EXPOSURE("exposure", Exposure.values()),
  /** Codes of {@link CareAction}. */
  CARE_ACTION("careAction", CareAction.values()),
  /** Codes of {@link CareManner}. */
  CARE_MANNER("careManner", CareManner.values()),
  /** Codes of {@link CareStanding}. */
  CARE_STANDING("careStanding", CareStanding.values()),
  /** Codes of {@link MachineType}. */
  MACHINE_TYPE("machineType", MachineType.values()),
  /** Codes of {@link WashMeasure}. */
  WASH_MEASURE("washMeasure", WashMeasure.values()),
  /** Codes of {@link WashPractice}. */
  WASH_PRACTICE("washPractice", WashPractice.values()),
  /** Codes of {@link RepairLevel}. */
  REPAIR_LEVEL("repairLevel", RepairLevel.values()),
  /** Codes of {@link Transfer}. */
  TRANSFER("transfer", Transfer.values()),
  /** Codes of {@link RetirementReason}. */
  RETIREMENT_REASON("retirementReason", RetirementReason.values()),
  /** Codes of {@link DisposalRoute}. */
  DISPOSAL_ROUTE("disposalRoute", DisposalRoute.values()),
  /** Codes of {@link RouteCondition}. */
  ROUTE_CONDITION("routeCondition", RouteCondition.values()),
  /** Codes of {@link CustodyStep}. */
  CUSTODY_STEP("custodyStep", CustodyStep.values()),
  /** Codes of {@link RecordItem}. */
  RECORD_ITEM("recordItem", RecordItem.values()),
  /** Codes of {@link RecordDetail}. */
  RECORD_DETAIL("recordDetail", RecordDetail.values()),
  /** Codes of {@link ReasonKind}. */
  REASON_KIND("reasonKind", ReasonKind.values()),
  /** Codes of {@link OutBecause}. */
  OUT_BECAUSE("outBecause", OutBecause.values()),
  /** Codes of {@link Service}. */
  SERVICE("service", Service.values()),
  /** Codes of {@link Headline}. */
  HEADLINE("headline", Headline.values()),
  /** Codes of {@link YesNoUnknown}. */
  KNOWN("known", YesNoUnknown.values()),
  /** Codes of {@link Legibility}. */
  LEGIBILITY("legibility", Legibility.values()),
  /** Codes of {@link Property}. */
  PROPERTY("property", Property.values()),
  /** Codes of {@link TestOutcome}. */
  TEST_OUTCOME("testOutcome", TestOutcome.values()),
  /** Codes of {@link CareEntry}. */
  CARE_ENTRY("careEntry", CareEntry.values()),
  /** Codes of {@link Contaminant}. */
  CONTAMINANT("contaminant", Contaminant.values()),
  /** Codes of {@link AdoptionKind}. */
  ADOPTION_KIND("adoptionKind", AdoptionKind.values()),
  /** Codes of {@link SaleParty}. */
  SALE_PARTY("saleParty", SaleParty.values()),
  /** Codes of {@link PfasContent}. */
  PFAS_CONTENT("pfasContent", PfasContent.values()),
  /** Codes of {@link RetentionStart}. */
  RETENTION_START("retentionStart", RetentionStart.values()),
  /** Codes of {@link Start}. */
  START("start", Start.values()),
  /** Codes of {@link Subject}. */
  SUBJECT("subject", Subject.values()),
  /** Codes of {@link OverlayKind}. */
  OVERLAY_KIND("overlayKind", OverlayKind.values()),
  /** Codes of {@link Levelled.Why}. */
  WHY_LATE("whyLate", Levelled.Why.values()),
  /** Codes of {@link ObjectionKind}. */
  OBJECTION("objection", ObjectionKind.values()),
  /** Codes of {@link SafetyNotice.Asks}. */
  NOTICE_ASKS("noticeAsks", SafetyNotice.Asks.values()),
  /** Codes of {@link Join.Place}. */
  JOIN_PLACE("joinPlace", Join.Place.values()),
  /** Codes of {@link NoResultReason}. */
  NO_RESULT_REASON("noResultReason", NoResultReason.values()),
  /** Codes of {@link FailureMode}. */
  FAILURE_MODE("failureMode", FailureMode.values()),
  /** Codes of {@link SpecimenOrigin}. */
  SPECIMEN_ORIGIN("specimenOrigin", SpecimenOrigin.values()),
  /** Codes of {@link Direction}. */
  DIRECTION("direction", Direction.values()),
  /** Codes of {@link Statistic}. */
  STATISTIC("statistic", Statistic.values()),
  /** Codes of {@link Construction}. */
  CONSTRUCTION("construction", Construction.values()),
  /** Codes of {@link HowSeen}. */
  SEEN("seen", HowSeen.values()),
  /** Codes of {@link Confidence}. */
  CONFIDENCE("confidence", Confidence.values()),
  /** Codes of {@link SourceKind}. */
  SOURCE_KIND("sourceKind", SourceKind.values());

  private final String jsonName;
  private final ImmutableList<Enum<?>> codes;

  GearCodeSet(String jsonName, Enum<?>[] codes) {
    this.jsonName = jsonName;
    this.codes = ImmutableList.copyOf(codes);
  }

  @Override
  public String jsonName() {
    return jsonName;
  }

  @Override
  public List<Enum<?>> codes() {
    return codes;
  }
}
