/**
 * A small rule set that never changes, gear that is fit under it, and generators of hard cases; of
 * the shipped rules and whatever can be handed over as well where a module has them. It uses only
 * what the library shows to everyone.
 */
package org.ensemblerules.testkit;
