/** Whether all rivals give the same answers. */
package org.ensemblerules.example.benchmarks.rivals;
