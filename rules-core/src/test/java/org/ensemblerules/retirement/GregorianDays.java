package org.ensemblerules.retirement;

/** Days counted by the rules of the Gregorian calendar alone, without a date library. */
final class GregorianDays {
  private static final int[] LENGTHS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

  private GregorianDays() {}

  /** Days from 1 January 1970 to a day; one beyond the end of its month means that end. */
  static long number(int year, int month, int dayOfMonth) {
    long days = 0;
    for (int y = 1970; y < year; y++) {
      days += isLeap(y) ? 366 : 365;
    }
    for (int y = year; y < 1970; y++) {
      days -= isLeap(y) ? 366 : 365;
    }
    for (int m = 1; m < month; m++) {
      days += length(year, m);
    }
    return days + Math.min(dayOfMonth, length(year, month)) - 1;
  }

  private static int length(int year, int month) {
    return month == 2 && isLeap(year) ? 29 : LENGTHS[month - 1];
  }

  private static boolean isLeap(int year) {
    return year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
  }
}
