/**
 * A small rule set that never changes, gear that is fit under it, and generators of hard cases. It
 * uses only what the library shows to everyone.
 */
package org.ensemblerules.testkit;
