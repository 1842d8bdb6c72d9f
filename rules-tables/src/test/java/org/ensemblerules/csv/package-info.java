/** Every table as a file of comma-separated values, and what a general reader makes of it. */
package org.ensemblerules.csv;
