package org.ensemblerules.retirement;

import com.google.common.collect.ImmutableList;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.gear.MarkedDate;
import org.ensemblerules.gear.YesNoUnknown;
import org.ensemblerules.history.Moment;
import org.ensemblerules.source.InvalidValueException;

/** What was recorded of an element under custody. What is not recorded is unknown. */
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
      InvalidValueException.requireText("Deed.by", by, 200);
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

  private CustodyRecord(Builder builder) {
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
  public static Builder builder(Moment taken) {
    return new Builder(taken);
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

  /** Collects what was recorded. */
  public static final class Builder {
    private final Moment taken;
    private YesNoUnknown leftAsFound = YesNoUnknown.UNKNOWN;
    private YesNoUnknown leftUncleaned = YesNoUnknown.UNKNOWN;
    private YesNoUnknown storedProtected = YesNoUnknown.UNKNOWN;
    private YesNoUnknown accessLimited = YesNoUnknown.UNKNOWN;
    private Optional<String> custodian = Optional.empty();
    private final List<Handover> handovers = new ArrayList<>();
    private final List<Deed> photographed = new ArrayList<>();
    private final List<Deed> examined = new ArrayList<>();
    private Optional<Deed> released = Optional.empty();

    private Builder(Moment taken) {
      this.taken = Objects.requireNonNull(taken, "taken");
    }

    /**
     * Sets whether it was left as it was found.
     *
     * @param known yes, no or unknown; not null
     * @return this builder
     */
    public Builder leftAsFound(YesNoUnknown known) {
      leftAsFound = Objects.requireNonNull(known, "leftAsFound");
      return this;
    }

    /**
     * Sets whether it was left uncleaned.
     *
     * @param known yes, no or unknown; not null
     * @return this builder
     */
    public Builder leftUncleaned(YesNoUnknown known) {
      leftUncleaned = Objects.requireNonNull(known, "leftUncleaned");
      return this;
    }

    /**
     * Sets whether it is stored where nothing harms it.
     *
     * @param known yes, no or unknown; not null
     * @return this builder
     */
    public Builder storedProtected(YesNoUnknown known) {
      storedProtected = Objects.requireNonNull(known, "storedProtected");
      return this;
    }

    /**
     * Sets whether only few may get at it.
     *
     * @param known yes, no or unknown; not null
     * @return this builder
     */
    public Builder accessLimited(YesNoUnknown known) {
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
    public Builder custodian(String name) {
      custodian =
          Optional.of(InvalidValueException.requireText("CustodyRecord.custodian", name, 200));
      return this;
    }

    /**
     * Adds that it went from one to another.
     *
     * @param handover from whom to whom, and when; not null
     * @return this builder
     */
    public Builder handover(Handover handover) {
      handovers.add(Objects.requireNonNull(handover, "handover"));
      return this;
    }

    /**
     * Adds that photographs were taken.
     *
     * @param deed when, and by whom; not null
     * @return this builder
     */
    public Builder photographed(Deed deed) {
      photographed.add(Objects.requireNonNull(deed, "photographed"));
      return this;
    }

    /**
     * Adds that an expert looked at it.
     *
     * @param deed when, and who; not null
     * @return this builder
     */
    public Builder examined(Deed deed) {
      examined.add(Objects.requireNonNull(deed, "examined"));
      return this;
    }

    /**
     * Sets that it was released.
     *
     * @param deed when, and who decided so; not null
     * @return this builder
     */
    public Builder released(Deed deed) {
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
}
