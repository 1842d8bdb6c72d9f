/** Whether the benchmarks run. */
package org.ensemblerules.example.benchmarks;
