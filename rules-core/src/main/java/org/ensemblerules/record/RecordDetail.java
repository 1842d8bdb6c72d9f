package org.ensemblerules.record;

/**
 * What a record item can be made of.
 *
 * @since 0.1
 */
public enum RecordDetail {
  /** The person it was issued to. */
  HOLDER("the person issued to"),
  /** The day. */
  DATE("the day"),
  /** In what condition it was. */
  CONDITION("the condition"),
  /** Who made it. */
  MAKER("the maker"),
  /** The model name or design. */
  MODEL("the model name or design"),
  /** The maker's identification, lot or serial number. */
  IDENTIFICATION("the identification, lot or serial number"),
  /** Month and year. */
  MONTH_AND_YEAR("month and year of manufacture"),
  /** What was found. */
  FINDINGS("what was found"),
  /** Why it was done. */
  REASON("the reason"),
  /** Who did it. */
  DOER("who did it"),
  /** A short description. */
  DESCRIPTION("a short description"),
  /** How it was disposed of. */
  METHOD("the method");

  private final String text;

  RecordDetail(String text) {
    this.text = text;
  }

  /**
   * Returns the detail in words.
   *
   * @return the text; never null
   */
  public String text() {
    return text;
  }
}
