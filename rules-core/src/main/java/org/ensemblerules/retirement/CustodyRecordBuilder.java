package org.ensemblerules.retirement;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.source.InvalidValueException;

/**
 * Collects what was recorded.
 *
 * @since 0.1
 */
public final class CustodyRecordBuilder {
  final Moment taken;
  YesNoUnknown leftAsFound = YesNoUnknown.UNKNOWN;
  YesNoUnknown leftUncleaned = YesNoUnknown.UNKNOWN;
  YesNoUnknown storedProtected = YesNoUnknown.UNKNOWN;
  YesNoUnknown accessLimited = YesNoUnknown.UNKNOWN;
  Optional<String> custodian = Optional.empty();
  final List<Handover> handovers = new ArrayList<>();
  final List<CustodyRecord.Deed> photographed = new ArrayList<>();
  final List<CustodyRecord.Deed> examined = new ArrayList<>();
  Optional<CustodyRecord.Deed> released = Optional.empty();

  CustodyRecordBuilder(Moment taken) {
    this.taken = Objects.requireNonNull(taken, "taken");
  }

  /**
   * Sets whether it was left as it was found.
   *
   * @param known yes, no or unknown; not null
   * @return this builder
   */
  public CustodyRecordBuilder leftAsFound(YesNoUnknown known) {
    leftAsFound = Objects.requireNonNull(known, "leftAsFound");
    return this;
  }

  /**
   * Sets whether it was left uncleaned.
   *
   * @param known yes, no or unknown; not null
   * @return this builder
   */
  public CustodyRecordBuilder leftUncleaned(YesNoUnknown known) {
    leftUncleaned = Objects.requireNonNull(known, "leftUncleaned");
    return this;
  }

  /**
   * Sets whether it is stored where nothing harms it.
   *
   * @param known yes, no or unknown; not null
   * @return this builder
   */
  public CustodyRecordBuilder storedProtected(YesNoUnknown known) {
    storedProtected = Objects.requireNonNull(known, "storedProtected");
    return this;
  }

  /**
   * Sets whether only few may get at it.
   *
   * @param known yes, no or unknown; not null
   * @return this builder
   */
  public CustodyRecordBuilder accessLimited(YesNoUnknown known) {
    accessLimited = Objects.requireNonNull(known, "accessLimited");
    return this;
  }

  /**
   * Sets the first custodian.
   *
   * @param name 1 to 200 characters; not null
   * @return this builder
   * @throws InvalidValueException if the name is blank or too long
   */
  public CustodyRecordBuilder custodian(String name) {
    custodian = Optional.of(CustodyRecord.requireName("CustodyRecord.custodian", name));
    return this;
  }

  /**
   * Adds that it went from one to another.
   *
   * @param handover from whom to whom, and when; not null
   * @return this builder
   */
  public CustodyRecordBuilder handover(Handover handover) {
    handovers.add(Objects.requireNonNull(handover, "handover"));
    return this;
  }

  /**
   * Adds that photographs were taken.
   *
   * @param deed when, and by whom; not null
   * @return this builder
   */
  public CustodyRecordBuilder photographed(CustodyRecord.Deed deed) {
    photographed.add(Objects.requireNonNull(deed, "photographed"));
    return this;
  }

  /**
   * Adds that an expert looked at it.
   *
   * @param deed when, and who; not null
   * @return this builder
   */
  public CustodyRecordBuilder examined(CustodyRecord.Deed deed) {
    examined.add(Objects.requireNonNull(deed, "examined"));
    return this;
  }

  /**
   * Sets that it was released.
   *
   * @param deed when, and who decided so; not null
   * @return this builder
   */
  public CustodyRecordBuilder released(CustodyRecord.Deed deed) {
    released = Optional.of(deed);
    return this;
  }

  /**
   * Makes the record.
   *
   * @return the record; never null
   */
  public CustodyRecord build() {
    return new CustodyRecord(this);
  }
}
