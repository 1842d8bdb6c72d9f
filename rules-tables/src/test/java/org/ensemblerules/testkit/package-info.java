/** Generators of whatever can be handed over, and an invented rule set to judge it by. */
package org.ensemblerules.testkit;
