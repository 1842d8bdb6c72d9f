/** What holds of every verdict, whatever was handed over. */
package org.ensemblerules.laws;
