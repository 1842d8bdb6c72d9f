package org.ensemblerules.retirement;

import com.google.common.collect.ImmutableList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.source.InvalidValueException;

/**
 * What was recorded of an element under custody. What is not recorded is unknown.
 *
 * @since 0.1
 */
public final class CustodyRecord {
  /**
   * Something somebody did to it on a day.
   *
   * @param on when; not null
   * @param by who, 1 to 200 characters; not null
   */
  public record Deed(MarkedDate on, String by) {
    /**
     * Checks the text.
     *
     * @throws InvalidValueException if the name is blank or too long
     */
    public Deed {
      Objects.requireNonNull(on, "on");
      requireName("Deed.by", by);
    }
  }

  private final Moment taken;
  private final YesNoUnknown leftAsFound;
  private final YesNoUnknown leftUncleaned;
  private final YesNoUnknown storedProtected;
  private final YesNoUnknown accessLimited;
  private final Optional<String> custodian;
  private final List<Handover> handovers;
  private final List<Deed> photographed;
  private final List<Deed> examined;
  private final Optional<Deed> released;

  CustodyRecord(CustodyRecordBuilder builder) {
    this.taken = builder.taken;
    this.leftAsFound = builder.leftAsFound;
    this.leftUncleaned = builder.leftUncleaned;
    this.storedProtected = builder.storedProtected;
    this.accessLimited = builder.accessLimited;
    this.custodian = builder.custodian;
    this.handovers = ImmutableList.copyOf(builder.handovers);
    this.photographed = ImmutableList.copyOf(builder.photographed);
    this.examined = ImmutableList.copyOf(builder.examined);
    this.released = builder.released;
  }

  /**
   * Starts a record of which nothing more is known.
   *
   * @param taken when it was taken out of service; an unknown date if nobody recorded it; not null
   * @return the builder; never null
   */
  public static CustodyRecordBuilder builder(Moment taken) {
    return new CustodyRecordBuilder(taken);
  }

  /**
   * Checks the name of somebody who has or had to do with it.
   *
   * @param field what it is called in the refusal; not null
   * @param name the name, 1 to 200 characters; not null
   * @return the name
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireName(String field, String name) {
    return InvalidValueException.requireText(field, name, 200);
  }

  /**
   * Returns when it was taken out of service.
   *
   * @return the moment; never null
   */
  public Moment taken() {
    return taken;
  }

  /**
   * Tells whether it was left as it was found.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown leftAsFound() {
    return leftAsFound;
  }

  /**
   * Tells whether it was left uncleaned.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown leftUncleaned() {
    return leftUncleaned;
  }

  /**
   * Tells whether it is stored where nothing harms it.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown storedProtected() {
    return storedProtected;
  }

  /**
   * Tells whether only few may get at it.
   *
   * @return yes, no or unknown; never null
   */
  public YesNoUnknown accessLimited() {
    return accessLimited;
  }

  /**
   * Returns the first custodian.
   *
   * @return the name; empty if none is recorded
   */
  public Optional<String> custodian() {
    return custodian;
  }

  /**
   * Returns who had it from whom.
   *
   * @return an unmodifiable list, as given; never null
   */
  public List<Handover> handovers() {
    return handovers;
  }

  /**
   * Returns when photographs were taken, and by whom.
   *
   * @return an unmodifiable list, as given; never null
   */
  public List<Deed> photographed() {
    return photographed;
  }

  /**
   * Returns when experts looked at it, and who they were.
   *
   * @return an unmodifiable list, as given; never null
   */
  public List<Deed> examined() {
    return examined;
  }

  /**
   * Returns when it was released, and who decided so.
   *
   * @return the release; empty if none is recorded
   */
  public Optional<Deed> released() {
    return released;
  }
}
