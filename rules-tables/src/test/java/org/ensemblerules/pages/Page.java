package org.ensemblerules.pages;

/**
 * A generated page.
 *
 * @param name the name of its file
 * @param text what it says
 */
record Page(String name, String text) {}
