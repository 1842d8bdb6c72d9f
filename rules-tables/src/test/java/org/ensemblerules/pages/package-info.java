/** Writes the pages of docs/tables from the shipped tables, and tells when they have drifted. */
package org.ensemblerules.pages;
