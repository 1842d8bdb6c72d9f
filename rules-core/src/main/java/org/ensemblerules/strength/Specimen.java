package org.ensemblerules.strength;

import java.util.Objects;
import java.util.Optional;
import org.ensemblerules.measure.Dimension;
import org.ensemblerules.measure.Quantity;
import org.ensemblerules.source.InvalidValueException;

/**
 * One specimen of a report: its reading, and what the laboratory recorded about how it went.
 *
 * @param id its name in the report, 1 to 40 characters; not null
 * @param direction the direction tested; not null
 * @param reading what was read; not null
 * @param failure what gave way; not null
 * @param fromJaw how far from a jaw it broke; empty if not recorded or no break at a jaw
 * @param slipped whether it slipped in the jaws or at the ring
 * @param leftMarkedLine whether a tear left the marked line
 * @param fault a fault of the test that the laboratory recorded; empty if none
 * @since 0.1
 */
public record Specimen(
    String id,
    Direction direction,
    Reading reading,
    FailureMode failure,
    Optional<Quantity> fromJaw,
    boolean slipped,
    boolean leftMarkedLine,
    Optional<String> fault) {
  /**
   * Checks the values.
   *
   * @throws InvalidValueException if a text is blank or too long, or the distance is negative or no
   *     length
   */
  public Specimen {
    requireId(id);
    Objects.requireNonNull(direction, "direction");
    Objects.requireNonNull(reading, "reading");
    Objects.requireNonNull(failure, "failure");
    fromJaw.ifPresent(
        distance ->
            InvalidValueException.require(
                distance.unit().dimension() == Dimension.LENGTH && distance.value().signum() >= 0,
                "Specimen.fromJaw",
                distance,
                "a length, zero or more"));
    fault.ifPresent(Specimen::requireFault);
  }

  /**
   * Checks a name alone.
   *
   * @param id the name, 1 to 40 characters; not null
   * @return the name
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireId(String id) {
    return InvalidValueException.requireText("Specimen.id", id, 40);
  }

  /**
   * Checks a recorded fault alone.
   *
   * @param fault the fault in words, 1 to 200 characters; not null
   * @return the fault
   * @throws InvalidValueException if it is blank or too long
   */
  public static String requireFault(String fault) {
    return InvalidValueException.requireText("Specimen.fault", fault, 200);
  }

  /**
   * Makes a specimen about which nothing else was recorded.
   *
   * @param id its name in the report; not null
   * @param direction the direction tested; not null
   * @param value the value read; not null
   * @return the specimen; never null
   * @throws InvalidValueException if the name is blank or the value impossible
   */
  public static Specimen of(String id, Direction direction, Quantity value) {
    return of(id, direction, new Reading.Single(value));
  }

  /**
   * Makes a specimen about which nothing else was recorded.
   *
   * @param id its name in the report; not null
   * @param direction the direction tested; not null
   * @param reading what was read; not null
   * @return the specimen; never null
   * @throws InvalidValueException if the name is blank
   */
  public static Specimen of(String id, Direction direction, Reading reading) {
    return new Specimen(
        id,
        direction,
        reading,
        FailureMode.NOT_RECORDED,
        Optional.empty(),
        false,
        false,
        Optional.empty());
  }

  /**
   * Records what gave way.
   *
   * @param mode what gave way; not null
   * @return this specimen with it; never null
   */
  public Specimen withFailure(FailureMode mode) {
    return new Specimen(id, direction, reading, mode, fromJaw, slipped, leftMarkedLine, fault);
  }

  /**
   * Records a break near a jaw.
   *
   * @param distance how far from the jaw; not null
   * @return this specimen with it; never null
   * @throws InvalidValueException if the distance is negative or no length
   */
  public Specimen withBreakFromJaw(Quantity distance) {
    return new Specimen(
        id, direction, reading, failure, Optional.of(distance), slipped, leftMarkedLine, fault);
  }

  /**
   * Records a slip in the jaws or at the ring.
   *
   * @return this specimen with it; never null
   */
  public Specimen withSlip() {
    return new Specimen(id, direction, reading, failure, fromJaw, true, leftMarkedLine, fault);
  }

  /**
   * Records that the tear left the marked line.
   *
   * @return this specimen with it; never null
   */
  public Specimen withTearOffLine() {
    return new Specimen(id, direction, reading, failure, fromJaw, slipped, true, fault);
  }

  /**
   * Records a fault of the test.
   *
   * @param what the fault in words, 1 to 200 characters; not null
   * @return this specimen with it; never null
   * @throws InvalidValueException if the text is blank or too long
   */
  public Specimen withFault(String what) {
    return new Specimen(
        id, direction, reading, failure, fromJaw, slipped, leftMarkedLine, Optional.of(what));
  }
}
